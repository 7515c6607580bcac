"""Opens Heftwell parcels without any of Heftwell's code, to prove that handoff.md is complete.

    python3 -m venv venv && venv/bin/pip install argon2-cffi pynacl cryptography cbor2
    venv/bin/python read_handoff.py VECTOR.toml ...

A vector is a TOML file: `parcel` in hex; for a paired one also `keys` (the recipient's 64 secret bytes) and
`pairing` (the kept pairing); for one under a code `code` (eight words). Or `offers`, two in hex, for the check
words. Or `frames`, a list of texts that hold every symbol from 0 on. Prints one JSON object a file.
"""

import hashlib
import hmac
import json
import pathlib
import sys
import tomllib
import zlib

import argon2.low_level
import cbor2
import nacl.bindings
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey
from cryptography.hazmat.primitives.asymmetric.x25519 import X25519PrivateKey, X25519PublicKey
from cryptography.hazmat.primitives.ciphers.aead import ChaCha20Poly1305

WORDS = (pathlib.Path(__file__).resolve().parents[2]
         / "src-tauri/crates/handoff/src/words/english.txt").read_text().split()


# ---- head and checksum (handoff.md, "What everything has in common") ----

def take_apart(parcel):
    """Kind, purpose, the ten bytes of the head, and the body."""
    head, body, checksum = parcel[:10], parcel[10:-4], parcel[-4:]
    assert head[:4] == b"HWHO", "foreign"
    assert zlib.crc32(parcel[:-4]).to_bytes(4, "big") == checksum, "damaged"
    assert head[4] == 1, "newer"
    assert int.from_bytes(head[7:10], "big") == len(parcel), "damaged"
    return head[5], head[6], head, body


# ---- HPKE, base mode (RFC 9180, sections 4 and 5) ----

SUITE_KEM = b"KEM" + (0x20).to_bytes(2, "big")
SUITE_HPKE = b"HPKE" + b"".join(n.to_bytes(2, "big") for n in (0x20, 1, 3))


def extract(suite, salt, label, secret):
    return hmac.digest(salt or bytes(32), b"HPKE-v1" + suite + label + secret, "sha256")


def expand(suite, key, label, info, length):
    info = length.to_bytes(2, "big") + b"HPKE-v1" + suite + label + info
    out, block = b"", b""
    while len(out) < length:
        block = hmac.digest(key, block + info + bytes([len(out) // 32 + 1]), "sha256")
        out += block
    return out[:length]


def context(shared_point, enc, recipient, info):
    """Key and base nonce."""
    eae = extract(SUITE_KEM, b"", b"eae_prk", shared_point)
    shared = expand(SUITE_KEM, eae, b"shared_secret", enc + recipient, 32)
    schedule = b"\x00" + extract(SUITE_HPKE, b"", b"psk_id_hash", b"") + extract(SUITE_HPKE, b"", b"info_hash", info)
    secret = extract(SUITE_HPKE, shared, b"secret", b"")
    return (expand(SUITE_HPKE, secret, b"key", schedule, 32), expand(SUITE_HPKE, secret, b"base_nonce", schedule, 12))


# ---- paired (handoff.md, "A parcel between paired devices") ----

def public(keys):
    """Both public keys of 64 secret bytes, X25519 first."""
    sealing = X25519PrivateKey.from_private_bytes(keys[:32]).public_key().public_bytes_raw()
    signing = Ed25519PrivateKey.from_private_bytes(keys[32:]).public_key().public_bytes_raw()
    return sealing + signing


def key_id(keys):
    return hashlib.sha256(keys).digest()[:8]


def route(pairing_id, enc):
    return hashlib.sha256(b"heftwell handoff 1 route" + pairing_id + enc).digest()[:8]


def bound(head, body, sender, recipient, pairing_id):
    """What is bound in beside the content; also HPKE's associated data."""
    return head + body[:16] + sender + recipient + pairing_id


def open_paired(parcel, keys, pairing):
    _, purpose, head, body = take_apart(parcel)
    pairing = cbor2.loads(pairing)
    card = cbor2.loads(pairing[1])
    own, sender = public(keys), card[1] + card[2]
    enc, sealed = body[16:48], body[48:]
    assert body[:8] == key_id(own), "for another device"
    assert body[8:16] == route(pairing[3], enc), "from a device that is not paired"
    point = X25519PrivateKey.from_private_bytes(keys[:32]).exchange(X25519PublicKey.from_public_bytes(enc))
    key, nonce = context(point, enc, own[:32], b"heftwell handoff 1 seal" + head + body[:8])
    binding = bound(head, body, sender, own, pairing[3])
    inside = ChaCha20Poly1305(key).decrypt(nonce, sealed, binding)
    signature, content = inside[:64], inside[64:]
    Ed25519PublicKey.from_public_bytes(sender[32:]).verify(signature, b"heftwell handoff 1 signature" + binding + content)
    return {"from": card[3], "role": card[4], **read_content(purpose, content)}


def read_content(purpose, content):
    fields = cbor2.loads(content)
    payload = zlib.decompress(fields[4], -15)
    read = {"purpose": purpose, "counter": fields[1], "issued_at_ms": fields[2], "expires_at_ms": fields[3],
            "payload": payload.hex()}
    return {**read, "care_plan": read_care_plan(payload)} if purpose == 3 else read


def read_care_plan(payload):
    """What a care plan says (record.md, "25 person plan")."""
    kind, layout, must, body = cbor2.loads(payload)
    assert kind == 25 and layout == 1 and not must, "newer"
    names = ("what", "ways", "workers", "equipment", "issued_by", "issued_on", "review_on")
    moves = [{name: one[key] for key, name in enumerate(names, 1) if key in one} for one in body[6]]
    return {"id": body[1].hex(), "version": body[2], "made_at_ms": body[3][0], "code": body[4], "by": body[5],
            "moves": moves}


# ---- under a code (handoff.md, "A parcel under a code") ----

def slow_hash(secret, salt):
    return argon2.low_level.hash_secret_raw(secret, salt, time_cost=3, memory_cost=65536, parallelism=1, hash_len=32,
                                            type=argon2.low_level.Type.ID, version=0x13)


def code_bytes(words):
    bits = "".join(f"{WORDS.index(word):011b}" for word in words.split())
    return int(bits, 2).to_bytes(11, "big")


def open_unpaired(parcel, words):
    _, purpose, head, body = take_apart(parcel)
    salt, nonce, sealed = body[:16], body[16:40], body[40:]
    key = slow_hash(code_bytes(words), salt)
    content = nacl.bindings.crypto_aead_xchacha20poly1305_ietf_decrypt(
        sealed, b"heftwell handoff 1 code" + head + salt, nonce, key)
    return {"from": "not verified", **read_content(purpose, content)}


# ---- pairing (handoff.md, "Pairing") ----

def compare(one, other):
    bodies = sorted(take_apart(offer)[3] for offer in (one, other))
    digests = b"".join(hashlib.sha256(body).digest() for body in bodies)
    out = slow_hash(b"".join(bodies), hashlib.sha256(b"heftwell handoff 1 pairing" + digests).digest())
    bits = "".join(f"{byte:08b}" for byte in out)
    return {"words": [WORDS[int(bits[at:at + 11], 2)] for at in range(0, 66, 11)], "pairing_id": out[16:].hex()}


# ---- frames (handoff.md, "Frames") ----

BASE45 = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"


def base45(text):
    out = b""
    for at in range(0, len(text), 3):
        group = text[at:at + 3]
        value = sum(BASE45.index(c) * 45 ** n for n, c in enumerate(group))
        out += value.to_bytes(len(group) - 1, "big")
    return out


def join(texts):
    """The parcel, from frames that carry its own bytes; mixtures (ids beyond the last symbol) are passed over."""
    symbols = {}
    for text in texts:
        frame = base45(text)
        assert frame[0] == 0xF1 and zlib.crc32(frame[:-4]).to_bytes(4, "big") == frame[-4:]
        session, total, size = frame[1:5], int.from_bytes(frame[5:8], "big"), int.from_bytes(frame[8:10], "big")
        symbols[int.from_bytes(frame[10:12], "big")] = frame[12:-4]
    parcel = b"".join(symbols[n] for n in range(-(-total // size)))[:total]
    assert hashlib.sha256(parcel).digest()[:4] == session
    return parcel


def read(vector):
    if "offers" in vector:
        return compare(*map(bytes.fromhex, vector["offers"]))
    if "frames" in vector:
        return {"parcel": join(vector["frames"]).hex()}
    parcel = bytes.fromhex(vector["parcel"])
    if "code" in vector:
        return open_unpaired(parcel, vector["code"])
    return open_paired(parcel, bytes.fromhex(vector["keys"]), bytes.fromhex(vector["pairing"]))


if __name__ == "__main__":
    for name in sys.argv[1:]:
        print(json.dumps(read(tomllib.loads(pathlib.Path(name).read_text())), ensure_ascii=False))
