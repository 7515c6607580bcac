SELECT plan_id FROM patient_plan WHERE patient_id = ?1 ORDER BY plan_id DESC
