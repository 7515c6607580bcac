UPDATE care_person SET record = ?2 WHERE id = ?1
