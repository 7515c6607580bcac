INSERT INTO opened (digest, at_ms) VALUES (?1, ?2)
