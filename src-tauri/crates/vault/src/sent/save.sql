INSERT INTO sent (pairing, purpose, number) VALUES (?1, ?2, ?3)
ON CONFLICT (pairing, purpose) DO UPDATE SET number = excluded.number
