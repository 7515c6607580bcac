INSERT INTO departure (record) VALUES (?1)
