INSERT INTO patient (pairing, record) VALUES (?1, ?2)
