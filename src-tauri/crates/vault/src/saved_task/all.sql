SELECT id, record FROM saved_task ORDER BY id
