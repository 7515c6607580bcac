DELETE FROM received WHERE pairing = ?1 AND length(pairing) = 16
