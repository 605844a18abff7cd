"""What a message is about, matched by meaning: word forms, synonyms and examples of our own."""
