INSERT INTO care_person (record) VALUES (?1)
