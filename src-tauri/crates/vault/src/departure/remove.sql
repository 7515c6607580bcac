DELETE FROM departure WHERE id = ?1
