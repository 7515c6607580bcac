INSERT INTO plan_why (plan_id, version, record) VALUES (?1, ?2, ?3)
ON CONFLICT (plan_id, version) DO UPDATE SET record = excluded.record
