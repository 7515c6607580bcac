SELECT id, record FROM received WHERE pairing = ?1 ORDER BY id DESC
