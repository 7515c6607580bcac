INSERT INTO saved_task (record) VALUES (?1)
