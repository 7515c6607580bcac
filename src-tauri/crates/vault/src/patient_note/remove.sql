DELETE FROM patient_note WHERE id = ?1 AND patient_id = ?2
