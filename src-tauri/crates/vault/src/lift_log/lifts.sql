SELECT id, at_ms, done, way, record FROM lift ORDER BY id
