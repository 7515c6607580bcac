SELECT id, record FROM patient WHERE pairing = ?1 AND length(pairing) = 16
