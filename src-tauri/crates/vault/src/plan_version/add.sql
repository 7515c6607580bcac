INSERT INTO plan_version (plan_id, version, record) VALUES (?1, ?2, ?3)
