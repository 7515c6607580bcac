DELETE FROM departure
