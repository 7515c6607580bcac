INSERT INTO seen (pairing, purpose, numbers) VALUES (?1, ?2, ?3)
ON CONFLICT (pairing, purpose) DO UPDATE SET numbers = excluded.numbers
