INSERT INTO pairing (id, record) VALUES (?1, ?2)
