SELECT id, record FROM practice ORDER BY id
