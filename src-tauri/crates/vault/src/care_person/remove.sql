DELETE FROM care_person WHERE id = ?1
