SELECT id, record FROM patient ORDER BY id
