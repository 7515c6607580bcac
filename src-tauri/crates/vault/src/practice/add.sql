INSERT INTO practice (at_ms, record) VALUES (?1, ?2)
