INSERT INTO followed (plan, is_active, record) VALUES (?1, 1, ?2)
