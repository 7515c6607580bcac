INSERT INTO plan (record) VALUES (?1)
