INSERT INTO patient_note (patient_id, record) VALUES (?1, ?2)
