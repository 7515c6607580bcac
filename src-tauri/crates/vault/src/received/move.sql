UPDATE received SET pairing = ?2 WHERE pairing = ?1
