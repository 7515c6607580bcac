SELECT id, record FROM departure WHERE id < ?1 ORDER BY id DESC LIMIT ?2
