"""Writes the vectors of this folder: parcels made by code that is not ours, whole ones and ones with a fault.

    venv/bin/python make_vectors.py        (packages: see docs/formats/read_handoff.py)

`frozen/` must open for ever: a file that is there is left alone. Every other file has one fault, named by the file,
and says which refusal is expected. Everything in here is invented.
"""

import hashlib
import pathlib
import struct
import sys
import zlib

import cbor2
import nacl.bindings
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey
from cryptography.hazmat.primitives.asymmetric.x25519 import X25519PrivateKey, X25519PublicKey
from cryptography.hazmat.primitives.ciphers.aead import ChaCha20Poly1305

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parents[2] / "docs/formats"))
sys.path.insert(0, str(HERE.parent))
import care_plan.make_vectors as care  # noqa: E402
import read_handoff as reader  # noqa: E402

NOW, DAY = 1_795_597_920_000, 24 * 60 * 60 * 1000
CLINICIAN, PATIENT, STRANGER = (bytes([n]) * 64 for n in (1, 2, 3))
PAIRING_ID = bytes(range(16))
PLAN = b"an invented plan: box, 6 kg, twice a day"
# A point of small order of Ed25519's curve and of X25519's (RFC 7748, section 6.1: all-zero secret).
SMALL = bytes(32)


# ---- making ----

def frame_up(kind, purpose, body, magic=b"HWHO", major=1, length=None):
    head = magic + bytes([major, kind, purpose]) + (14 + len(body) if length is None else length).to_bytes(3, "big")
    return checked(head + body)


def checked(covered):
    return covered + zlib.crc32(covered).to_bytes(4, "big")


def flip(data, at, bit=1):
    at %= len(data)
    return data[:at] + bytes([data[at] ^ bit]) + data[at + 1:]


def deflate(plain):
    packer = zlib.compressobj(9, zlib.DEFLATED, -15)
    return packer.compress(plain) + packer.flush()


def card(keys, alias, role, **more):
    fields = {1: reader.public(keys)[:32], 2: reader.public(keys)[32:], 3: alias, 4: role}
    return cbor2.dumps({**fields, **{int(k[1:]): v for k, v in more.items()}}, canonical=True)


def pairing(mine, theirs):
    return cbor2.dumps({1: theirs, 2: reader.key_id(reader.public(mine)), 3: PAIRING_ID, 4: NOW}, canonical=True)


def content(counter=7, issued=NOW, expires=NOW + DAY, packed=None, **more):
    fields = {1: counter, 2: issued, 3: expires, 4: deflate(PLAN) if packed is None else packed}
    return cbor2.dumps({**fields, **{int(k[1:]): v for k, v in more.items()}}, canonical=True)


def seal(inside=None, *, sender=CLINICIAN, signer=None, to=PATIENT, pairing_id=PAIRING_ID, purpose=1,
         signed_pairing=None, signed_purpose=None, signed_to=None, bound_purpose=None, domain=b"heftwell handoff 1 signature",
         route_id=None, ephemeral=b"\x09" * 32, enc=None, change=None):
    """A paired parcel; each argument but the first few is something a forger might do otherwise."""
    inside = content() if inside is None else inside
    own, recipient = reader.public(sender), reader.public(to)
    secret = X25519PrivateKey.from_private_bytes(ephemeral)
    enc = enc or secret.public_key().public_bytes_raw()
    total = 14 + 48 + 64 + len(inside) + 16
    head = b"HWHO" + bytes([1, 2, purpose]) + total.to_bytes(3, "big")
    front = reader.key_id(recipient) + reader.route(route_id or pairing_id, enc)

    def binding(purpose_=purpose, to_=to, pairing_=pairing_id):
        other = head[:6] + bytes([purpose_]) + head[7:]
        return reader.bound(other, front, own, reader.public(to_), pairing_)
    signed = binding(signed_purpose or purpose, signed_to or to, signed_pairing or pairing_id)
    signature = Ed25519PrivateKey.from_private_bytes((signer or sender)[32:]).sign(domain + signed + inside)
    plain = signature + inside
    if change:
        plain = change(plain)
    point = secret.exchange(X25519PublicKey.from_public_bytes(recipient[:32]))
    key, nonce = reader.context(point, enc, recipient[:32], b"heftwell handoff 1 seal" + head + front[:8])
    sealed = ChaCha20Poly1305(key).encrypt(nonce, plain, binding(bound_purpose or purpose))
    return frame_up(2, purpose, front + enc + sealed)


CODE = "legal winner thank year wave sausage worth useful"


def seal_unpaired(inside=None, code=CODE, purpose=1, bound_purpose=None):
    inside = content() if inside is None else inside
    salt, nonce = b"\x05" * 16, b"\x06" * 24
    total = 14 + 40 + len(inside) + 16
    head = b"HWHO" + bytes([1, 3, bound_purpose or purpose]) + total.to_bytes(3, "big")
    sealed = nacl.bindings.crypto_aead_xchacha20poly1305_ietf_encrypt(
        inside, b"heftwell handoff 1 code" + head + salt, nonce, reader.slow_hash(reader.code_bytes(code), salt))
    return frame_up(3, purpose, salt + nonce + sealed)


def offer(body=None, **frame):
    return frame_up(1, frame.pop("purpose", 0), b"\x07" * 16 + (card(PATIENT, "Ada", 1) if body is None else body), **frame)


def frame(data=None, *, version=0xF1, session=b"\x01\x02\x03\x04", total=4000, size=816, id_=0):
    data = bytes(816) if data is None else data
    return checked(bytes([version]) + session + total.to_bytes(3, "big") + struct.pack(">HH", size, id_) + data)


def base45(data):
    out = ""
    for at in range(0, len(data), 2):
        group = data[at:at + 2]
        value = int.from_bytes(group, "big")
        out += "".join(reader.BASE45[value // 45 ** n % 45] for n in range(len(group) + 1))
    return out


# ---- faults ----

GOOD, UNPAIRED, OFFER, FRAME = seal(), seal_unpaired(), offer(), frame()
CARE = content(packed=deflate(care.GOOD))
BOMB = deflate(bytes(10_000_000))
TWICE = b"\xa5\x01\x07" + content()[1:]  # the counter's key again in front
PAIRED_FAULTS = {
    # name: (bytes, refusal)
    "parcel_empty": (b"", "foreign"),
    "parcel_of_another_app": (b"PK\x03\x04" + bytes(100), "foreign"),
    "parcel_magic_in_lower_case": (checked(b"hwho" + GOOD[4:-4]), "foreign"),
    "parcel_magic_alone": (b"HWHO", "truncated"),
    "parcel_magic_cut": (b"HWH", "truncated"),
    "parcel_cut_in_the_head": (GOOD[:9], "truncated"),
    "parcel_cut_in_the_key": (GOOD[:40], "truncated"),
    "parcel_cut_by_one_byte": (GOOD[:-1], "truncated"),
    "parcel_cut_to_half": (GOOD[:len(GOOD) // 2], "truncated"),
    "parcel_with_a_byte_after_the_end": (GOOD + b"\0", "damaged"),
    "parcel_twice_in_a_row": (GOOD + GOOD, "damaged"),
    "bit_flipped_in_the_major": (flip(GOOD, 4), "damaged"),
    "bit_flipped_in_the_kind": (flip(GOOD, 5), "damaged"),
    "bit_flipped_in_the_recipient": (flip(GOOD, 12), "damaged"),
    "bit_flipped_in_the_seal": (flip(GOOD, 90), "damaged"),
    "bit_flipped_in_the_checksum": (flip(GOOD, -1), "damaged"),
    "all_zero_after_the_magic": (b"HWHO" + bytes(200), "damaged"),
    "length_shorter_than_it_is": (checked(GOOD[:7] + (40).to_bytes(3, "big") + GOOD[10:-4]), "damaged"),
    "length_longer_than_it_is": (checked(GOOD[:7] + (60000).to_bytes(3, "big") + GOOD[10:-4]), "damaged"),
    "body_too_short_for_a_key": (frame_up(2, 1, bytes(20)), "damaged"),
    "body_empty": (frame_up(2, 1, b""), "damaged"),
    "major_zero": (frame_up(2, 1, bytes(100), major=0), "damaged"),
    "major_of_tomorrow": (frame_up(2, 1, bytes(100), major=2), "newer"),
    "major_largest": (frame_up(9, 9, bytes(3), major=255), "newer"),
    "kind_of_tomorrow": (frame_up(4, 1, bytes(100)), "newer"),
    "purpose_of_tomorrow": (seal(purpose=9), "newer"),
    "purpose_none": (seal(purpose=0), "newer"),
    "offer_given_as_a_parcel": (OFFER, "other_kind"),
    "code_parcel_given_as_paired": (UNPAIRED, "other_kind"),
    "sealed_to_somebody_else": (seal(to=STRANGER), "wrong_recipient"),
    "recipient_renamed_to_us": (checked(seal(to=STRANGER)[:10] + GOOD[10:18] + seal(to=STRANGER)[18:-4]), "not_authentic"),
    "from_a_stranger": (seal(sender=STRANGER, pairing_id=b"\x33" * 16), "unknown_sender"),
    "from_an_ended_pairing": (seal(pairing_id=b"\x44" * 16), "unknown_sender"),
    "route_changed": (checked(flip(GOOD[:-4], 20)), "unknown_sender"),
    "encapsulated_key_changed": (checked(flip(GOOD[:-4], 30)), "unknown_sender"),
    "encapsulated_key_of_small_order": (seal(enc=SMALL), "not_authentic"),
    "sealed_part_changed": (checked(flip(GOOD[:-4], 80)), "not_authentic"),
    "tag_changed": (checked(flip(GOOD[:-4], -1)), "not_authentic"),
    "sealed_part_emptied": (frame_up(2, 1, GOOD[10:58]), "not_authentic"),
    "sealed_part_a_byte_shorter": (frame_up(2, 1, GOOD[10:-5]), "not_authentic"),
    "purpose_changed_on_the_way": (checked(GOOD[:6] + b"\x02" + GOOD[7:-4]), "not_authentic"),
    "care_plan_passed_off_as_a_plan": (checked(seal(CARE, purpose=3)[:6] + b"\x01" + seal(CARE, purpose=3)[7:-4]),
                                       "not_authentic"),
    "care_plan_signed_as_a_plan": (seal(CARE, purpose=3, signed_purpose=1), "not_authentic"),
    "care_plan_bound_as_a_plan": (seal(CARE, purpose=3, bound_purpose=1), "not_authentic"),
    "care_plan_for_somebody_else": (seal(CARE, purpose=3, to=STRANGER), "wrong_recipient"),
    "care_plan_from_a_stranger": (seal(CARE, purpose=3, sender=STRANGER, pairing_id=b"\x33" * 16), "unknown_sender"),
    "care_plan_expired": (seal(content(issued=NOW - 2 * DAY, expires=NOW - DAY, packed=deflate(care.GOOD)), purpose=3),
                          "expired"),
    "care_plan_cut": (seal(CARE, purpose=3)[:-30], "truncated"),
    "purpose_bound_otherwise": (seal(bound_purpose=2), "not_authentic"),
    "signed_for_another_purpose": (seal(signed_purpose=2), "not_authentic"),
    "signed_for_another_recipient": (seal(signed_to=STRANGER), "not_authentic"),
    "signed_for_another_pairing": (seal(signed_pairing=bytes(16)), "not_authentic"),
    "signed_by_a_stranger": (seal(signer=STRANGER), "not_authentic"),
    "signed_under_another_domain": (seal(domain=b"heftwell handoff 1 route"), "not_authentic"),
    "signature_all_zero": (seal(change=lambda plain: bytes(64) + plain[64:]), "not_authentic"),
    "signature_changed": (seal(change=lambda plain: flip(plain, 3)), "not_authentic"),
    "content_changed_after_signing": (seal(change=lambda plain: flip(plain, -1)), "not_authentic"),
    "sender_is_somebody_with_our_pairing": (seal(sender=STRANGER), "not_authentic"),
    "expired_yesterday": (seal(content(issued=NOW - 2 * DAY, expires=NOW - DAY)), "expired"),
    "expired_this_instant": (seal(content(issued=NOW - DAY, expires=NOW)), "expired"),
    "expires_before_it_begins": (seal(content(expires=NOW - 1, issued=NOW)), "unreadable"),
    "valid_for_a_century": (seal(content(expires=NOW + 36500 * DAY)), "unreadable"),
    "times_at_the_ends_of_the_range": (seal(content(issued=-2**63, expires=2**63 - 1)), "unreadable"),
    "must_understand_an_unknown_field": (seal(content(k0=[9], k9=1)), "newer"),
    "counter_missing": (seal(cbor2.dumps({2: NOW, 3: NOW + DAY, 4: deflate(PLAN)})), "unreadable"),
    "counter_below_zero": (seal(content(counter=-1)), "unreadable"),
    "counter_a_text": (seal(content(counter="7")), "unreadable"),
    "counter_twice": (seal(TWICE), "unreadable"),
    "keys_out_of_order": (seal(cbor2.dumps({2: NOW, 1: 7, 3: NOW + DAY, 4: deflate(PLAN)})), "unreadable"),
    "content_followed_by_a_byte": (seal(content() + b"\0"), "unreadable"),
    "content_empty": (seal(b""), "unreadable"),
    "content_a_list": (seal(cbor2.dumps([7, NOW, NOW + DAY, deflate(PLAN)])), "unreadable"),
    "content_nested_without_end": (seal(b"\xa1\x01" + b"\x81" * 5000), "unreadable"),
    "number_in_a_long_form": (seal(content().replace(b"\x01\x07", b"\x01\x18\x07", 1)), "unreadable"),
    "payload_not_packed": (seal(content(packed=PLAN)), "unreadable"),
    "payload_cut": (seal(content(packed=deflate(PLAN)[:-2])), "unreadable"),
    "payload_followed_by_a_byte": (seal(content(packed=deflate(PLAN) + b"\0")), "unreadable"),
    "payload_empty_stream": (seal(content(packed=b"")), "unreadable"),
    "payload_a_bomb": (seal(content(packed=BOMB)), "too_long"),
    "payload_one_byte_too_long": (seal(content(packed=deflate(bytes(256 * 1024 + 1)))), "too_long"),
}
UNPAIRED_FAULTS = {
    "code_of_another_parcel": (seal_unpaired(code="zoo " * 7 + "zoo"), "wrong_code"),
    "code_parcel_changed": (checked(flip(UNPAIRED[:-4], 70)), "wrong_code"),
    "code_parcel_salt_changed": (checked(flip(UNPAIRED[:-4], 12)), "wrong_code"),
    "code_parcel_nonce_changed": (checked(flip(UNPAIRED[:-4], 30)), "wrong_code"),
    "code_parcel_purpose_changed": (seal_unpaired(purpose=2, bound_purpose=1), "wrong_code"),
    "code_care_plan_passed_off_as_a_plan": (seal_unpaired(CARE, purpose=1, bound_purpose=3), "wrong_code"),
    "code_parcel_cut": (UNPAIRED[:-20], "truncated"),
    "code_parcel_bit_flipped": (flip(UNPAIRED, 70), "damaged"),
    "code_parcel_without_a_seal": (frame_up(3, 1, UNPAIRED[10:50]), "wrong_code"),
    "code_parcel_too_short_for_a_nonce": (frame_up(3, 1, bytes(30)), "damaged"),
    "code_parcel_expired": (seal_unpaired(content(issued=NOW - DAY, expires=NOW - 1)), "expired"),
    "code_parcel_a_bomb": (seal_unpaired(content(packed=BOMB)), "too_long"),
    "code_parcel_not_readable": (seal_unpaired(b"\xa0"), "unreadable"),
    "paired_parcel_given_with_a_code": (GOOD, "other_kind"),
}
ADA = reader.public(PATIENT)
OFFER_FAULTS = {
    "parcel_given_as_an_offer": (GOOD, "other_kind"),
    "offer_cut": (OFFER[:-9], "truncated"),
    "offer_bit_flipped": (flip(OFFER, 30), "damaged"),
    "offer_of_tomorrow": (offer(purpose=1), "newer"),
    "offer_without_a_card": (offer(b""), "malformed"),
    "offer_longer_than_any": (offer(card(PATIENT, "Ada", 1, k9="x" * 600)), "malformed"),
    "offer_too_short_for_its_number": (frame_up(1, 0, bytes(9)), "malformed"),
    "card_without_a_sealing_key": (offer(cbor2.dumps({2: ADA[32:], 3: "Ada", 4: 1})), "malformed"),
    "card_with_a_short_key": (offer(cbor2.dumps({1: ADA[:31], 2: ADA[32:], 3: "Ada", 4: 1})), "malformed"),
    "card_with_alias_twice": (offer(b"\xa5" + card(PATIENT, "Ada", 1)[1:] + b"\x04\x01"), "malformed"),
    "card_sealing_key_of_small_order": (offer(cbor2.dumps({1: SMALL, 2: ADA[32:], 3: "Ada", 4: 1})), "weak_key"),
    "card_signing_key_of_small_order": (offer(cbor2.dumps({1: ADA[:32], 2: b"\x01" + SMALL[1:], 3: "Ada", 4: 1})), "weak_key"),
    "card_signing_key_no_point": (offer(cbor2.dumps({1: ADA[:32], 2: b"\x02" + SMALL[1:], 3: "Ada", 4: 1})), "weak_key"),
    "card_role_of_tomorrow": (offer(card(PATIENT, "Ada", 9)), "newer"),
    "card_must_understand_an_unknown_field": (offer(card(PATIENT, "Ada", 1, k0=[9], k9=1)), "newer"),
    "alias_empty": (offer(card(PATIENT, "", 1)), "alias"),
    "alias_too_long": (offer(card(PATIENT, "a" * 41, 1)), "alias"),
    "alias_turns_the_writing": (offer(card(PATIENT, "A\u202eda", 1)), "alias"),
    "alias_with_a_line_break": (offer(card(PATIENT, "A\nda", 1)), "alias"),
    "alias_with_a_hidden_character": (offer(card(PATIENT, "A\u200bda", 1)), "alias"),
    "alias_in_another_spelling": (offer(card(PATIENT, "Man\u0303ana", 1)), "alias"),
    "alias_not_utf8": (offer(card(PATIENT, "Ada", 1).replace(b"cAda", b"cA\xffa")), "malformed"),
}
TEXT_FAULTS = {
    "text_empty": ("", "foreign"),
    "text_an_address": ("https://example.org/plan", "foreign"),
    "text_an_address_in_capitals": ("HTTPS://EXAMPLE.ORG", "foreign"),
    "text_of_digits": ("4006381333931", "foreign"),
    "text_one_character": ("A", "foreign"),
    "text_a_group_too_large": (":::" + base45(GOOD)[3:], "foreign"),
    "text_in_lower_case": (base45(GOOD).lower(), "foreign"),
    "text_longer_than_any_symbol": ("0" * 4297, "foreign"),
    "text_of_a_cut_parcel": (base45(GOOD[:100]), "truncated"),
    "text_of_a_damaged_parcel": (base45(flip(GOOD, 50)), "damaged"),
    "frame_bit_flipped": (base45(flip(FRAME, 100)), "damaged"),
    "frame_cut": (base45(FRAME[:-30]), "damaged"),
    "frame_of_tomorrow": (base45(frame(version=0xF2)), "newer"),
    "frame_of_nothing": (base45(checked(b"\xf1")), "out_of_bounds"),
    "frame_mark_alone": (base45(b"\xf1"), "damaged"),
    "frame_total_zero": (base45(frame(total=0)), "out_of_bounds"),
    "frame_total_past_the_bound": (base45(frame(total=65537)), "out_of_bounds"),
    "frame_total_largest": (base45(frame(total=0xFFFFFF)), "out_of_bounds"),
    "frame_symbol_size_zero": (base45(frame(size=0, data=b"")), "out_of_bounds"),
    "frame_symbol_size_one": (base45(frame(size=1, data=b"x")), "out_of_bounds"),
    "frame_symbol_size_not_aligned": (base45(frame(size=815, data=bytes(815))), "out_of_bounds"),
    "frame_symbol_size_past_the_bound": (base45(frame(size=1224, data=bytes(1224))), "out_of_bounds"),
    "frame_with_less_data_than_it_says": (base45(frame(bytes(808))), "out_of_bounds"),
    "frame_with_more_data_than_it_says": (base45(frame(bytes(824))), "out_of_bounds"),
}


# ---- writing ----

def lines(**fields):
    def value(v):
        if isinstance(v, list):
            return "[\n" + "".join(f"    {value(x)},\n" for x in v) + "]"
        if isinstance(v, bytes):
            v = v.hex()
        if isinstance(v, int):
            return str(v)
        escaped = "".join(c if " " <= c <= "~" and c not in '"\\' else f"\\u{ord(c):04x}" for c in v)
        return f'"{escaped}"'
    return "".join(f"{name} = {value(v)}\n" for name, v in fields.items())


PAIRED_KEYS = {"keys": PATIENT, "pairing": pairing(PATIENT, card(CLINICIAN, "Physio North", 3))}
INSIDE = {"payload": PLAN, "purpose": 1, "counter": 7, "issued_at_ms": NOW, "expires_at_ms": NOW + DAY}


def main():
    for name, (data, refusal) in PAIRED_FAULTS.items():
        write(name, read_as="paired", bytes=data, refused=refusal)
    for name, (data, refusal) in UNPAIRED_FAULTS.items():
        write(name, read_as="unpaired", bytes=data, refused=refusal)
    for name, (data, refusal) in OFFER_FAULTS.items():
        write(name, read_as="offer", bytes=data, refused=refusal)
    for name, (text, refusal) in TEXT_FAULTS.items():
        write(name, read_as="text", text=text, refused=refusal)
    freeze("paired_by_an_independent_sealer", parcel=GOOD, **PAIRED_KEYS, **INSIDE)
    freeze("paired_with_a_field_of_tomorrow", parcel=seal(content(k9=[1, 2])), **PAIRED_KEYS, **INSIDE)
    freeze("unpaired_by_an_independent_sealer", parcel=UNPAIRED, code=CODE, **INSIDE)
    inside = {**INSIDE, "payload": care.GOOD, "purpose": 3}
    freeze("care_plan_by_an_independent_sealer", parcel=seal(CARE, purpose=3), **PAIRED_KEYS, **inside)
    freeze("care_plan_under_a_code", parcel=seal_unpaired(CARE, purpose=3), code=CODE, **inside)
    one, other = offer(card(CLINICIAN, "Physio North", 3)), offer(card(PATIENT, "Mañana", 1))
    found = reader.compare(one, other)
    freeze("offers", offers=[one, other], words=found["words"], pairing_id=bytes.fromhex(found["pairing_id"]))


def write(name, **fields):
    (HERE / f"{name}.toml").write_text(lines(**fields))


def freeze(name, **fields):
    path = HERE / "frozen" / f"{name}.toml"
    if not path.exists():
        path.write_text(lines(**fields))


if __name__ == "__main__":
    main()
