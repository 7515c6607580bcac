UPDATE patient SET pairing = ?2, record = ?3 WHERE id = ?1
