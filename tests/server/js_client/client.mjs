// A person's client for the tests, independent of the one that the bot is built on: matrix-js-sdk
// with its Rust crypto, which trusts signed devices only.
//
// Lines of JSON in: {"id": 1, "do": "say", …}. Lines of JSON out: {"id": 1, "done": …} or
// {"id": 1, "failed": "…"}, and {"event": {…}} for each event of a room, once it is decrypted.
import { on, once } from "node:events";
import { readFile } from "node:fs/promises";
import { createInterface } from "node:readline";
import { setTimeout } from "node:timers/promises";

// The output is for answers alone; the libraries keep what `console` is when they are loaded.
for (const level of ["debug", "trace", "log", "info", "warn"]) console[level] = () => {};
const sdk = await import("matrix-js-sdk");
const cryptoApi = await import("matrix-js-sdk/lib/crypto-api/index.js");
const { decrypt, encrypt } = await import("./attachments.mjs");
const [{ PollStartEvent }, { PollResponseEvent }, { PollEndEvent }] = await Promise.all(
    ["Start", "Response", "End"].map(
        (part) => import(`matrix-js-sdk/lib/extensible_events_v1/Poll${part}Event.js`),
    ),
);

let client;
// The library holds verifications weakly: what nobody else holds is collected in the middle.
const held = new Set();
const tell = (line) => process.stdout.write(`${JSON.stringify(line)}\n`);

// In

const text = (body, more = {}) => ({ msgtype: "m.text", body, "m.mentions": {}, ...more });

const commands = {
    async start({ homeserver, user_id, password }) {
        const identifier = { type: "m.id.user", user: user_id };
        const login = { type: "m.login.password", identifier, password };
        const { access_token, device_id } = await sdk
            .createClient({ baseUrl: homeserver })
            .loginRequest({ ...login, initial_device_display_name: "another client" });
        client = sdk.createClient({
            baseUrl: homeserver,
            userId: user_id,
            accessToken: access_token,
            deviceId: device_id,
            verificationMethods: ["m.sas.v1"],
        });
        await client.initRustCrypto({ useIndexedDB: false });
        const crypto = client.getCrypto();
        crypto.setDeviceIsolationMode(new cryptoApi.OnlySignedDevicesIsolationMode());
        await crypto.bootstrapCrossSigning({
            setupNewCrossSigning: true,
            authUploadDeviceSigningKeys: (upload) => upload({ ...login, session: undefined }),
        });
        client.on(sdk.ClientEvent.Event, hear);
        client.on(sdk.MatrixEventEvent.Decrypted, hear);
        await client.startClient({ threadSupport: true, pollTimeout: 5000 });
        await until(() => client.isInitialSyncComplete(), sdk.ClientEvent.Sync);
        return { device_id, crypto: crypto.getVersion() };
    },

    async make_room({ invite }) {
        const algorithm = { algorithm: "m.megolm.v1.aes-sha2" };
        const { room_id } = await client.createRoom({
            preset: sdk.Preset.TrustedPrivateChat,
            invite,
            is_direct: invite.length === 1,
            initial_state: [{ type: "m.room.encryption", state_key: "", content: algorithm }],
        });
        return room_id;
    },

    async meet({ room_id, user_id }) {
        const joined = () => client.getRoom(room_id)?.getMember(user_id)?.membership === "join";
        await until(joined, sdk.RoomMemberEvent.Membership);
    },

    // Words; in a thread, as a reply, calling somebody, as a correction.
    say: ({ room_id, body, thread_id = null, reply_to, mention, edit }) => {
        const more = {};
        if (mention) more["m.mentions"] = { user_ids: [mention] };
        if (reply_to) more["m.relates_to"] = { "m.in_reply_to": { event_id: reply_to } };
        if (!edit) return send(room_id, sdk.EventType.RoomMessage, text(body, more), thread_id);
        more["m.relates_to"] = { rel_type: sdk.RelationType.Replace, event_id: edit };
        more["m.new_content"] = text(body);
        return send(room_id, sdk.EventType.RoomMessage, text(`* ${body}`, more));
    },

    react: ({ room_id, event_id, key }) => {
        const relation = { rel_type: sdk.RelationType.Annotation, event_id, key };
        return send(room_id, sdk.EventType.Reaction, { "m.relates_to": relation });
    },

    vote: ({ room_id, event_id, answers }) => {
        const { type, content } = PollResponseEvent.from(answers, event_id).serialize();
        return send(room_id, type, content);
    },

    ask: ({ room_id, question, answers }) => {
        const kind = sdk.M_POLL_KIND_DISCLOSED;
        const { type, content } = PollStartEvent.from(question, answers, kind).serialize();
        return send(room_id, type, content);
    },

    close_poll: ({ room_id, event_id }) => {
        const { type, content } = PollEndEvent.from(event_id, "closed").serialize();
        return send(room_id, type, content);
    },

    share_place: ({ room_id, uri }) => {
        const kind = sdk.LocationAssetType.Pin;
        const content = sdk.ContentHelpers.makeLocationContent(undefined, uri, Date.now(), null, kind);
        return send(room_id, sdk.EventType.RoomMessage, content);
    },

    async share_picture({ room_id, path, mime, width, height, caption }) {
        const { data, file } = await encrypt(await readFile(path));
        const uploaded = await client.uploadContent(data, { type: "application/octet-stream" });
        return send(room_id, sdk.EventType.RoomMessage, {
            msgtype: "m.image",
            body: caption,
            filename: "frame.jpg",
            info: { mimetype: mime, w: width, h: height, size: data.length },
            file: { ...file, url: uploaded.content_uri },
        });
    },

    async fetch({ file }) {
        const address = client.mxcUrlToHttp(file.url, ...Array(4), true, true);
        const headers = { Authorization: `Bearer ${client.getAccessToken()}` };
        const answer = await fetch(address, { headers });
        if (!answer.ok) throw new Error(`download: ${answer.status}`);
        return (await decrypt(Buffer.from(await answer.arrayBuffer()), file)).toString("base64");
    },

    async take_back({ room_id, event_id }) {
        return (await client.redactEvent(room_id, event_id)).event_id;
    },

    // Compare emoji with another's only device, or in a room that both are in; both sides agree.
    async verify({ user_id, room_id }) {
        const crypto = client.getCrypto();
        const devices = (await crypto.getUserDeviceInfo([user_id])).get(user_id);
        const request = room_id
            ? await crypto.requestVerificationDM(user_id, room_id)
            : await crypto.requestDeviceVerification(user_id, [...devices.keys()][0]);
        held.add(request);
        const { Ready, Cancelled, Done } = cryptoApi.VerificationPhase;
        const reaches = async (phase) => {
            const over = () => [phase, Cancelled].includes(request.phase);
            await until(over, cryptoApi.VerificationRequestEvent.Change, request);
            if (request.phase !== phase) throw new Error(`cancelled: ${request.cancellationCode}`);
        };
        await reaches(Ready);
        const verifier = await request.startVerification("m.sas.v1");
        held.add(verifier);
        const verified = verifier.verify();
        const shown = () => verifier.getShowSasCallbacks();
        await Promise.race([until(shown, cryptoApi.VerifierEvent.ShowSas, verifier), verified]);
        const sas = shown();
        await sas.confirm();
        await verified;
        await reaches(Done);
        // Trusted once the signature of the other's keys has been to the server and back.
        const isTrusted = async () => (await crypto.getUserVerificationStatus(user_id)).isVerified();
        while (!(await isTrusted())) await setTimeout(50);
        return sas.sas.emoji.map(([, name]) => name);
    },

    // Until this client knows somebody's device, and that its owner has signed it.
    async trust({ user_id, device_id }) {
        const crypto = client.getCrypto();
        const isSigned = async () =>
            (await crypto.getDeviceVerificationStatus(user_id, device_id))?.signedByOwner;
        while (!(await isSigned())) await setTimeout(50);
    },

    async stop() {
        client?.stopClient();
        setImmediate(() => process.exit(0));
    },
};

/** Send, and give the event's name: by the server's answer, or by the event where that is first. */
async function send(room_id, type, content, thread_id = null) {
    const transaction = client.makeTxnId();
    const answered = client.sendEvent(room_id, thread_id, type, content, transaction);
    // In a thread the library loses the answer to what the sync has brought already.
    const over = new AbortController();
    const brought = synced(transaction, over.signal);
    try {
        return await Promise.any([answered.then(({ event_id }) => event_id), brought]);
    } finally {
        over.abort();
    }
}

async function synced(transaction, signal) {
    for await (const [event] of on(client, sdk.ClientEvent.Event, { signal })) {
        if (event.getUnsigned().transaction_id === transaction) return event.getId();
    }
}

/** Wait until it is so, looking again at each event of that name. */
async function until(isSo, name, emitter = client) {
    while (!isSo()) await once(emitter, name);
}

// Out

async function hear(event) {
    if (!event.getRoomId() || !event.getId() || event.isState()) return;
    if (event.isEncrypted() && !event.getClearContent()) {
        if (event.decryptionFailureReason !== null) tell({ event: { ...head(event), type: null } });
        return; // it comes again when it is decrypted
    }
    const info = event.isEncrypted() && (await client.getCrypto().getEncryptionInfoForEvent(event));
    tell({
        event: {
            ...head(event),
            type: event.getType(),
            content: event.getContent(),
            shield: info && [info.shieldColour, info.shieldReason],
            reply_to: event.replyEventId ?? null,
            thread_id: event.threadRootId ?? null,
            poll: pollOf(event),
            place: placeOf(event),
        },
    });
}

function head(event) {
    return {
        room_id: event.getRoomId(),
        event_id: event.getId(),
        sender: event.getSender(),
        encrypted: event.isEncrypted(),
        failure: event.decryptionFailureReason,
    };
}

/** What the library itself reads out of a poll. */
function pollOf(event) {
    if (!sdk.M_POLL_START.matches(event.getType())) return null;
    const { question, answers } = event.unstableExtensibleEvent;
    return { question: question.text, answers: answers.map(({ id, text }) => [id, text]) };
}

/** What the library itself reads out of a location. */
function placeOf(event) {
    if (event.getContent().msgtype !== "m.location") return null;
    const content = sdk.ContentHelpers.parseLocationEvent(event.getContent());
    const { uri, description } = sdk.M_LOCATION.findIn(content);
    const asset = sdk.M_ASSET.findIn(content).type;
    return { uri, description, asset, ts: sdk.M_TIMESTAMP.findIn(content) };
}

for await (const line of createInterface({ input: process.stdin })) {
    const { id, do: name, ...given } = JSON.parse(line);
    // Several may be under way at once; what fails fails alone.
    Promise.resolve()
        .then(() => commands[name](given))
        .then((done) => tell({ id, done: done ?? null }))
        .catch((error) => tell({ id, failed: String(error?.message ?? error) }));
}
process.exit(0);
