INSERT INTO received (pairing, record) VALUES (?1, ?2)
