INSERT INTO lift (at_ms, done, way, record) VALUES (?1, ?2, ?3, ?4)
