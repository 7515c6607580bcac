SELECT record FROM lift WHERE id = ?1
