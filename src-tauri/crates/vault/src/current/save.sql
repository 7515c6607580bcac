INSERT INTO current (kind, record) VALUES (?1, ?2)
ON CONFLICT (kind) DO UPDATE SET record = excluded.record
