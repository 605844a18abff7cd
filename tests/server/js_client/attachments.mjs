// Encrypted attachments as the Matrix specification has them (client-server interface, "Sending
// encrypted attachments", v2): AES-256 in counter mode, half of the counter random, SHA-256.
import { webcrypto } from "node:crypto";

const { subtle } = webcrypto;
const unpadded = (bytes) => Buffer.from(bytes).toString("base64").replace(/=+$/, "");

export async function encrypt(data) {
    const iv = new Uint8Array(16);
    webcrypto.getRandomValues(iv.subarray(0, 8));
    const key = await subtle.generateKey({ name: "AES-CTR", length: 256 }, true, ["encrypt"]);
    const sealed = await subtle.encrypt({ name: "AES-CTR", counter: iv, length: 64 }, key, data);
    return {
        data: Buffer.from(sealed),
        file: {
            v: "v2",
            key: { ...(await subtle.exportKey("jwk", key)), key_ops: ["encrypt", "decrypt"] },
            iv: unpadded(iv),
            hashes: { sha256: unpadded(await subtle.digest("SHA-256", sealed)) },
        },
    };
}

export async function decrypt(sealed, file) {
    const hash = unpadded(await subtle.digest("SHA-256", sealed));
    if (hash !== file.hashes.sha256) throw new Error("the hash does not fit");
    const key = await subtle.importKey("jwk", file.key, { name: "AES-CTR" }, false, ["decrypt"]);
    const counter = Buffer.from(file.iv, "base64");
    return Buffer.from(await subtle.decrypt({ name: "AES-CTR", counter, length: 64 }, key, sealed));
}
