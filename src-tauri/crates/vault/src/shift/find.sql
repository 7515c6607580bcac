SELECT record FROM shift WHERE id = ?1
