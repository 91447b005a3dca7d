// The formats of docs/formats, written from those pages alone: envelope, key slots, pairing codes, recovery code,
// confirmation number, signed link, acknowledgement. A second reader beside core's own; tests only.
'use strict';
const crypto = require('crypto');
const p = require('./primitives.js');
const { argon2id } = require('./argon2.js');

const text = value => Buffer.from(value, 'latin1');
const be = (value, size) => Buffer.from(BigInt(value).toString(16).padStart(2 * size, '0'), 'hex');
const number = bytes => BigInt('0x' + bytes.toString('hex'));
const need = (holds, what) => { if (!holds) throw new Error(what); };

/** Reads from the front, never past the end. */
class Reader {
    constructor(bytes) { this.rest = bytes; }
    take(size) {
        need(size <= this.rest.length, 'cut short');
        const taken = this.rest.subarray(0, size);
        this.rest = this.rest.subarray(size);
        return taken;
    }
    int(size) { return number(this.take(size)); }
    block() { return this.take(Number(this.int(4))); }
    end() { need(this.rest.length === 0, 'bytes are left over'); }
}
const block = bytes => Buffer.concat([be(bytes.length, 4), bytes]);

// --- envelope.md -------------------------------------------------------------------------------------
function padme(length) {
    const exponent = Math.floor(Math.log2(length)), kept = Math.floor(Math.log2(exponent)) + 1;
    const step = 2 ** (exponent - kept);
    return Math.ceil(length / step) * step;
}
function pad(plaintext) {
    const needed = plaintext.length + 1;
    const size = needed <= 8192 ? Math.ceil(needed / 1024) * 1024 : padme(needed);
    return Buffer.concat([plaintext, Buffer.from([0x80]), Buffer.alloc(size - needed)]);
}
function unpad(padded) {
    const end = padded.lastIndexOf(0x80);
    need(end >= 0 && padded.subarray(end + 1).every(byte => byte === 0), 'padding');
    return padded.subarray(0, end);
}
const deviceOf = publicKey => p.blake2b(16, publicKey);
const signedText = (domain, body) => Buffer.concat([text(domain), Buffer.from([0]), p.blake2b(32, body)]);

function sealEnvelope(e) {
    const key = crypto.randomBytes(32), nonce = crypto.randomBytes(24);
    const associated = Buffer.concat([text('EBE1'), be(e.kind, 1), be(0, 1), be(1, 2), e.mailbox, deviceOf(p.signPublic(e.senderSeed)),
        be(e.sequence, 8), e.previous, be(e.epoch, 4), nonce, be(e.recipients.length, 2), be(0, 2), p.blake2b(32, text('EB-commit-v1'), key),
        ...e.recipients.flatMap(recipient => [p.blake2b(16, recipient), p.sealTo(recipient, key)])]);
    const before = Buffer.concat([associated, block(p.aeadSeal(key, nonce, associated, pad(e.plaintext)))]);
    return Buffer.concat([before, p.sign(e.senderSeed, signedText('EB-ENV-v1', before))]);
}

function openEnvelope(envelope, senderPublic, recipientSecret) {
    const r = new Reader(envelope);
    need(r.take(4).equals(text('EBE1')), 'magic');
    const kind = r.int(1);
    need(r.int(1) === 0n && r.int(2) === 1n, 'flags or suite');
    const found = { kind: Number(kind), mailbox: r.take(16), sender: r.take(16), sequence: r.int(8), previous: r.take(32), epoch: r.int(4) };
    const nonce = r.take(24), count = Number(r.int(2));
    need(count >= 1 && count <= 8 && r.int(2) === 0n, 'recipients');
    const commitment = r.take(32), wraps = [];
    for (let i = 0; i < count; ++i) wraps.push([r.take(16), r.take(80)]);
    const associated = envelope.subarray(0, 144 + 96 * count);
    const ciphertext = r.block(), before = envelope.subarray(0, envelope.length - 64), signature = r.take(64);
    r.end();
    need(found.sender.equals(deviceOf(senderPublic)), 'sender');
    need(p.verify(senderPublic, signedText('EB-ENV-v1', before), signature), 'signature');
    const own = p.blake2b(16, p.boxPublic(recipientSecret));
    const mine = wraps.find(([id]) => id.equals(own));
    need(mine, 'recipient');
    const key = p.openSealed(recipientSecret, mine[1]);
    need(p.blake2b(32, text('EB-commit-v1'), key).equals(commitment), 'commitment');
    found.plaintext = unpad(p.aeadOpen(key, nonce, associated, ciphertext));
    found.hash = p.blake2b(32, envelope);
    return found;
}

// --- vault.md ----------------------------------------------------------------------------------------
const wrappingKey = (secret, salt, passes, memoryKiB, keystore) =>
    p.blake2b(32, Buffer.concat([text('EB-kek-v1'), argon2id(secret, salt, passes, memoryKiB, 32)]), keystore.length ? keystore : Buffer.alloc(32));

function makeKeyFile(slots, dataKey) {
    const file = Buffer.alloc(480);
    slots.forEach((s, i) => {
        const salt = crypto.randomBytes(16), nonce = crypto.randomBytes(24);
        const key = wrappingKey(s.secret, salt, s.passes, s.memoryKiB, s.keystore);
        const head = Buffer.concat([text('EBV1'), be(2, 1), be(s.kind, 1), be(0, 2), be(s.passes, 4), be(s.memoryKiB, 4), salt, nonce,
            p.blake2b(16, text('EB-vault-commit'), key)]);
        Buffer.concat([head, p.aeadSeal(key, nonce, head, dataKey)]).copy(file, 120 * i);
    });
    return Buffer.concat([file, p.blake2b(16, file)]);
}

function openKeyFile(file, kind, secret, keystore) {
    need(file.length === 496 && p.blake2b(16, file.subarray(0, 480)).equals(file.subarray(480)), 'checksum');
    for (let at = 0; at < 480; at += 120) {
        const slot = file.subarray(at, at + 120);
        if (!slot.subarray(0, 4).equals(text('EBV1')) || slot[5] !== kind) continue;
        const key = wrappingKey(secret, slot.subarray(16, 32), slot.readUInt32BE(8), slot.readUInt32BE(12), keystore);
        need(p.blake2b(16, text('EB-vault-commit'), key).equals(slot.subarray(56, 72)), 'wrong key');
        return p.aeadOpen(key, slot.subarray(32, 56), slot.subarray(0, 72), slot.subarray(72));
    }
    throw new Error('no such slot');
}
const databaseKey = dataKey => p.deriveKey(dataKey, 1, 'eb-vault');

// --- pairing.md --------------------------------------------------------------------------------------
function toQrText(o) {
    const body = Buffer.concat([be(1, 1), be(o.tls ? 0 : 1, 1), be(o.expires, 4), o.id, o.secret, o.root, o.epochKey, be(o.epoch, 4), o.hubKeyHash,
        be(o.hub.length, 1), text(o.hub)]);
    return 'EBP1:' + p.toBase32(Buffer.concat([body, p.blake2b(32, body).subarray(0, 4)]));
}
function fromQrText(code) {
    need(code.startsWith('EBP1:'), 'prefix');
    const whole = p.fromBase32(code.slice(5)), body = whole.subarray(0, whole.length - 4);
    need(p.blake2b(32, body).subarray(0, 4).equals(whole.subarray(body.length)), 'checksum');
    const r = new Reader(body);
    need(r.int(1) === 1n, 'version');
    const flags = r.int(1);
    need(flags <= 1n, 'flags');
    const o = { tls: flags === 0n, expires: r.int(4), id: r.take(8), secret: r.take(16), root: r.take(32), epochKey: r.take(32), epoch: r.int(4),
        hubKeyHash: r.take(32) };
    o.hub = r.take(Number(r.int(1))).toString('latin1');
    r.end();
    return o;
}
const grouped = letters => letters.match(/.{4}/g).join('-');
const typed = code => code.toUpperCase().replace(/[\s-]/g, '').replace(/0/g, 'O').replace(/1/g, 'I').replace(/8/g, 'B');
function toTypedCode(locator, secret) {
    const body = Buffer.concat([locator, secret]);
    return grouped(p.toBase32(Buffer.concat([body, be(p.crc16(body), 2)])));
}
function fromTypedCode(code) {
    const whole = p.fromBase32(typed(code)), body = whole.subarray(0, 13);
    need(whole.length === 15 && p.crc16(body) === whole.readUInt16BE(13), 'checksum');
    return { locator: body.subarray(0, 4), secret: body.subarray(4) };
}
function typedSecrets(locator, secret) {
    const key = argon2id(secret, Buffer.concat([locator, Buffer.alloc(12)]), 3, 64 * 1024, 32);
    return { offerSecret: p.blake2b(16, text('EB-typed-offer'), key), bundleKey: p.blake2b(32, text('EB-typed-bundle'), key) };
}
const confirmationNumber = (signing, box, nonce) =>
    (number(p.blake2b(32, Buffer.concat([text('EB-sas-v1'), signing, box, nonce])).subarray(0, 8)) % 1000000n).toString().padStart(6, '0');

function signLink(l, rootSeed) {
    const body = Buffer.concat([text('EBL1'), l.mailbox, l.phone, l.desk, block(Buffer.from(l.clinicName))]);
    return Buffer.concat([body, p.sign(rootSeed, signedText('EB-STMT-v1', body))]);
}
function openLink(signed, root) {
    const body = signed.subarray(0, signed.length - 64);
    need(p.verify(root, signedText('EB-STMT-v1', body), signed.subarray(body.length)), 'signature');
    const r = new Reader(body);
    need(r.take(4).equals(text('EBL1')), 'mark');
    const l = { mailbox: r.take(16), phone: r.take(32), desk: r.take(32), clinicName: r.block().toString() };
    r.end();
    return l;
}

// --- statements.md ------------------------------------------------------------------------------------
const statementKinds = { replaced: 2, ended: 3, least: 4 };
function signStatement(s, rootSeed) {
    const contents = { replaced: () => [s.mailbox, s.phone, be(s.held, 8), be(s.at, 8)], ended: () => [s.device, be(s.at, 8)],
        least: () => [be(s.number, 8), be(s.protocol, 4), be(s.at, 8)] };
    const body = Buffer.concat([text('EBT1'), be(statementKinds[s.type], 1), ...contents[s.type]()]);
    return Buffer.concat([body, p.sign(rootSeed, signedText('EB-STMT-v1', body))]);
}
function openStatement(signed, root) {
    const body = signed.subarray(0, signed.length - 64);
    need(p.verify(root, signedText('EB-STMT-v1', body), signed.subarray(body.length)), 'signature');
    const r = new Reader(body);
    need(r.take(4).equals(text('EBT1')), 'mark');
    const kind = Number(r.int(1)), type = Object.keys(statementKinds).find(name => statementKinds[name] === kind);
    need(type, 'kind');
    const s = { type };
    if (type === 'replaced') Object.assign(s, { mailbox: r.take(16), phone: r.take(16), held: r.int(8) });
    if (type === 'ended') s.device = r.take(16);
    if (type === 'least') Object.assign(s, { number: r.int(8), protocol: r.int(4) });
    s.at = r.int(8);
    r.end();
    return s;
}

// --- recovery_code.md ---------------------------------------------------------------------------------
function recoveryBits(bytes) {
    const check = (p.crc16(bytes) << 4) | (p.blake2b(16, Buffer.concat([text('EB-recovery-v1'), bytes]))[0] >> 4);
    return check;
}
function toRecoveryCode(bytes) {
    const check = recoveryBits(bytes);
    const letters = [15, 10, 5, 0].map(shift => p.toBase32(Buffer.from([((check >> shift) & 31) << 3]))[0]).join('');
    return grouped(p.toBase32(bytes) + letters);
}
function fromRecoveryCode(code) {
    const letters = typed(code);
    need(letters.length === 36, 'length');
    const bytes = p.fromBase32(letters.slice(0, 32));
    need(toRecoveryCode(bytes) === grouped(letters), 'check');
    return bytes;
}

module.exports = { sealEnvelope, openEnvelope, makeKeyFile, openKeyFile, databaseKey, toQrText, fromQrText, toTypedCode, fromTypedCode,
    typedSecrets, confirmationNumber, signLink, openLink, signStatement, openStatement, toRecoveryCode, fromRecoveryCode };
