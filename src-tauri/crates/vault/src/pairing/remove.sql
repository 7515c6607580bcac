DELETE FROM pairing WHERE id = ?1
