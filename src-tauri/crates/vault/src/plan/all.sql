SELECT id, record FROM plan ORDER BY id DESC
