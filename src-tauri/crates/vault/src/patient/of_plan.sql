SELECT patient_id FROM patient_plan WHERE plan_id = ?1
