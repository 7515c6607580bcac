SELECT record FROM pairing ORDER BY seq
