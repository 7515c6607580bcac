SELECT number FROM sent WHERE pairing = ?1 AND purpose = ?2
