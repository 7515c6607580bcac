SELECT record FROM care_person WHERE id = ?1
