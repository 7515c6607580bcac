SELECT numbers FROM seen WHERE pairing = ?1 AND purpose = ?2
