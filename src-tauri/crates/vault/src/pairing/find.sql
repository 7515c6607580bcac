SELECT record FROM pairing WHERE id = ?1
