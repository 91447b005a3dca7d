// What node's own crypto lacks, straight from the papers; for tests, not for secrets: nothing here runs in
// constant time. Sources: RFC 7693 (BLAKE2), RFC 8439 (ChaCha20, Poly1305), draft-irtf-cfrg-xchacha-03 (HChaCha20),
// RFC 9106 (Argon2), Bernstein, "Extending the Salsa20 nonce", 2011 (HSalsa20, XSalsa20), RFC 4648 (base32).
'use strict';
const crypto = require('crypto');

// --- BLAKE2b ------------------------------------------------------------------------------------
const IV = [0x6a09e667f3bcc908n, 0xbb67ae8584caa73bn, 0x3c6ef372fe94f82bn, 0xa54ff53a5f1d36f1n,
    0x510e527fade682d1n, 0x9b05688c2b3e6c1fn, 0x1f83d9abfb41bd6bn, 0x5be0cd19137e2179n];
const SIGMA = [
    [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15], [14, 10, 4, 8, 9, 15, 13, 6, 1, 12, 0, 2, 11, 7, 5, 3],
    [11, 8, 12, 0, 5, 2, 15, 13, 10, 14, 3, 6, 7, 1, 9, 4], [7, 9, 3, 1, 13, 12, 11, 14, 2, 6, 5, 10, 4, 0, 15, 8],
    [9, 0, 5, 7, 2, 4, 10, 15, 14, 1, 11, 12, 6, 8, 3, 13], [2, 12, 6, 10, 0, 11, 8, 3, 4, 13, 7, 5, 15, 14, 1, 9],
    [12, 5, 1, 15, 14, 13, 4, 10, 0, 7, 6, 3, 9, 2, 8, 11], [13, 11, 7, 14, 12, 1, 3, 9, 5, 0, 15, 4, 8, 6, 2, 10],
    [6, 15, 14, 9, 11, 3, 0, 8, 12, 2, 13, 7, 1, 4, 10, 5], [10, 2, 8, 4, 7, 6, 1, 5, 15, 11, 9, 14, 3, 12, 13, 0]];
const M64 = (1n << 64n) - 1n;
const ror64 = (x, n) => ((x >> n) | (x << (64n - n))) & M64;

function compress(h, block, counter, last) {
    const m = [];
    for (let i = 0; i < 16; ++i) m.push(block.readBigUInt64LE(8 * i));
    const v = [...h, ...IV];
    v[12] ^= counter & M64;
    v[13] ^= counter >> 64n;
    if (last) v[14] ^= M64;
    const g = (a, b, c, d, x, y) => {
        v[a] = (v[a] + v[b] + x) & M64; v[d] = ror64(v[d] ^ v[a], 32n);
        v[c] = (v[c] + v[d]) & M64; v[b] = ror64(v[b] ^ v[c], 24n);
        v[a] = (v[a] + v[b] + y) & M64; v[d] = ror64(v[d] ^ v[a], 16n);
        v[c] = (v[c] + v[d]) & M64; v[b] = ror64(v[b] ^ v[c], 63n);
    };
    for (let round = 0; round < 12; ++round) {
        const s = SIGMA[round % 10];
        g(0, 4, 8, 12, m[s[0]], m[s[1]]); g(1, 5, 9, 13, m[s[2]], m[s[3]]);
        g(2, 6, 10, 14, m[s[4]], m[s[5]]); g(3, 7, 11, 15, m[s[6]], m[s[7]]);
        g(0, 5, 10, 15, m[s[8]], m[s[9]]); g(1, 6, 11, 12, m[s[10]], m[s[11]]);
        g(2, 7, 8, 13, m[s[12]], m[s[13]]); g(3, 4, 9, 14, m[s[14]], m[s[15]]);
    }
    for (let i = 0; i < 8; ++i) h[i] ^= v[i] ^ v[i + 8];
}

/** BLAKE2b of `size` bytes, with a key, a salt and a personalisation of 16 bytes each if given. */
function blake2b(size, message, key = Buffer.alloc(0), salt = Buffer.alloc(16), personal = Buffer.alloc(16)) {
    const h = [...IV];
    h[0] ^= BigInt(0x01010000 ^ (key.length << 8) ^ size);
    h[4] ^= salt.readBigUInt64LE(0); h[5] ^= salt.readBigUInt64LE(8);
    h[6] ^= personal.readBigUInt64LE(0); h[7] ^= personal.readBigUInt64LE(8);
    const first = key.length ? Buffer.concat([key, Buffer.alloc(128 - key.length)]) : Buffer.alloc(0);
    const input = Buffer.concat([first, message]);
    let at = 0;
    while (input.length - at > 128) {
        compress(h, input.subarray(at, at + 128), BigInt(at + 128), false);
        at += 128;
    }
    const rest = Buffer.alloc(128);
    input.copy(rest, 0, at);
    compress(h, rest, BigInt(input.length), true);
    const out = Buffer.alloc(64);
    h.forEach((word, i) => out.writeBigUInt64LE(word, 8 * i));
    return out.subarray(0, size);
}

/** libsodium's crypto_kdf: keyed BLAKE2b of nothing, the number as salt, the context as personalisation. */
function deriveKey(key, number, context, size = 32) {
    const salt = Buffer.alloc(16), personal = Buffer.alloc(16);
    salt.writeBigUInt64LE(BigInt(number));
    personal.write(context, 'latin1');
    return blake2b(size, Buffer.alloc(0), key, salt, personal);
}

// --- ChaCha20 and Salsa20 cores --------------------------------------------------------------------
const rol = (x, n) => (x << n) | (x >>> (32 - n));
const words = buffer => Array.from({ length: buffer.length / 4 }, (_, i) => buffer.readUInt32LE(4 * i));
function unwords(list) {
    const out = Buffer.alloc(4 * list.length);
    list.forEach((word, i) => out.writeUInt32LE(word >>> 0, 4 * i));
    return out;
}
const CONSTANTS = words(Buffer.from('expand 32-byte k', 'latin1'));

function hchacha20(key, nonce16) {
    const x = [...CONSTANTS, ...words(key), ...words(nonce16)];
    const quarter = (a, b, c, d) => {
        x[a] = (x[a] + x[b]) | 0; x[d] = rol(x[d] ^ x[a], 16); x[c] = (x[c] + x[d]) | 0; x[b] = rol(x[b] ^ x[c], 12);
        x[a] = (x[a] + x[b]) | 0; x[d] = rol(x[d] ^ x[a], 8); x[c] = (x[c] + x[d]) | 0; x[b] = rol(x[b] ^ x[c], 7);
    };
    for (let i = 0; i < 10; ++i) {
        quarter(0, 4, 8, 12); quarter(1, 5, 9, 13); quarter(2, 6, 10, 14); quarter(3, 7, 11, 15);
        quarter(0, 5, 10, 15); quarter(1, 6, 11, 12); quarter(2, 7, 8, 13); quarter(3, 4, 9, 14);
    }
    return unwords([...x.slice(0, 4), ...x.slice(12, 16)]);
}

function aead(decipher, key, nonce, associated, input) {
    const inner = hchacha20(key, nonce.subarray(0, 16));
    const short = Buffer.concat([Buffer.alloc(4), nonce.subarray(16)]);
    const options = { authTagLength: 16 };
    if (!decipher) {
        const c = crypto.createCipheriv('chacha20-poly1305', inner, short, options);
        c.setAAD(associated, { plaintextLength: input.length });
        return Buffer.concat([c.update(input), c.final(), c.getAuthTag()]);
    }
    const d = crypto.createDecipheriv('chacha20-poly1305', inner, short, options);
    const body = input.subarray(0, input.length - 16);
    d.setAAD(associated, { plaintextLength: body.length });
    d.setAuthTag(input.subarray(input.length - 16));
    return Buffer.concat([d.update(body), d.final()]);
}
const aeadSeal = (key, nonce, associated, plaintext) => aead(false, key, nonce, associated, plaintext);
/** Throws if anything differs from sealing. */
const aeadOpen = (key, nonce, associated, ciphertext) => aead(true, key, nonce, associated, ciphertext);

function salsaRounds(start) {
    const x = [...start];
    const q = (a, b, c, d) => {
        x[b] ^= rol((x[a] + x[d]) | 0, 7); x[c] ^= rol((x[b] + x[a]) | 0, 9);
        x[d] ^= rol((x[c] + x[b]) | 0, 13); x[a] ^= rol((x[d] + x[c]) | 0, 18);
    };
    for (let i = 0; i < 10; ++i) {
        q(0, 4, 8, 12); q(5, 9, 13, 1); q(10, 14, 2, 6); q(15, 3, 7, 11);
        q(0, 1, 2, 3); q(5, 6, 7, 4); q(10, 11, 8, 9); q(15, 12, 13, 14);
    }
    return x;
}
function salsaState(key, input16) {
    const k = words(key), n = words(input16), c = CONSTANTS;
    return [c[0], k[0], k[1], k[2], k[3], c[1], n[0], n[1], n[2], n[3], c[2], k[4], k[5], k[6], k[7], c[3]];
}
function hsalsa20(key, nonce16) {
    const x = salsaRounds(salsaState(key, nonce16));
    return unwords([x[0], x[5], x[10], x[15], x[6], x[7], x[8], x[9]]);
}
function xsalsa20Stream(key, nonce24, size) {
    const inner = hsalsa20(key, nonce24.subarray(0, 16));
    const blocks = [];
    for (let counter = 0; counter * 64 < size; ++counter) {
        const number = Buffer.alloc(8);
        number.writeBigUInt64LE(BigInt(counter));
        const state = salsaState(inner, Buffer.concat([nonce24.subarray(16), number]));
        const mixed = salsaRounds(state);
        blocks.push(unwords(state.map((word, i) => (word + mixed[i]) | 0)));
    }
    return Buffer.concat(blocks).subarray(0, size);
}

function poly1305(key, message) {
    const little = buffer => BigInt('0x' + (Buffer.from(buffer).reverse().toString('hex') || '0'));
    const r = little(key.subarray(0, 16)) & 0x0ffffffc0ffffffc0ffffffc0fffffffn;
    const p = (1n << 130n) - 5n;
    let sum = 0n;
    for (let at = 0; at < message.length; at += 16)
        sum = ((sum + little(Buffer.concat([message.subarray(at, at + 16), Buffer.from([1])]))) * r) % p;
    const tag = (sum + little(key.subarray(16))) & ((1n << 128n) - 1n);
    return Buffer.from(tag.toString(16).padStart(32, '0'), 'hex').reverse();
}

// --- X25519, Ed25519 by node; the sealed box by hand -------------------------------------------------
const derPrefix = { secretX: '302e020100300506032b656e04220420', publicX: '302a300506032b656e032100',
    secretEd: '302e020100300506032b657004220420', publicEd: '302a300506032b6570032100' };
const keyObject = (kind, raw) => {
    const der = Buffer.concat([Buffer.from(derPrefix[kind], 'hex'), raw]);
    return kind.startsWith('secret') ? crypto.createPrivateKey({ key: der, format: 'der', type: 'pkcs8' })
        : crypto.createPublicKey({ key: der, format: 'der', type: 'spki' });
};
const rawPublic = secretKey => crypto.createPublicKey(secretKey).export({ format: 'der', type: 'spki' }).subarray(-32);
const boxPublic = secret => rawPublic(keyObject('secretX', secret));
const signPublic = seed => rawPublic(keyObject('secretEd', seed));
const sign = (seed, message) => crypto.sign(null, message, keyObject('secretEd', seed));
const verify = (publicKey, message, signature) => crypto.verify(null, message, keyObject('publicEd', publicKey), signature);
const exchange = (secret, publicKey) =>
    crypto.diffieHellman({ privateKey: keyObject('secretX', secret), publicKey: keyObject('publicX', publicKey) });

function secretBox(secret, publicKey, nonce, opens, input) {
    const key = hsalsa20(exchange(secret, publicKey), Buffer.alloc(16));
    const body = opens ? input.subarray(16) : input;
    const stream = xsalsa20Stream(key, nonce, 32 + body.length);
    const other = Buffer.from(body.map((byte, i) => byte ^ stream[32 + i]));
    const tag = poly1305(stream.subarray(0, 32), opens ? body : other);
    if (!opens) return Buffer.concat([tag, other]);
    if (!tag.equals(input.subarray(0, 16))) throw new Error('sealed box: the tag does not hold');
    return other;
}
const sealNonce = (ephemeral, recipient) => blake2b(24, Buffer.concat([ephemeral, recipient]));
function sealTo(recipient, message, secret = crypto.randomBytes(32)) {
    const ephemeral = boxPublic(secret);
    return Buffer.concat([ephemeral, secretBox(secret, recipient, sealNonce(ephemeral, recipient), false, message)]);
}
function openSealed(secret, sealed) {
    const ephemeral = sealed.subarray(0, 32);
    return secretBox(secret, ephemeral, sealNonce(ephemeral, boxPublic(secret)), true, sealed.subarray(32));
}

// --- text ------------------------------------------------------------------------------------------
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567';
function toBase32(bytes) {
    let bits = '', out = '';
    for (const byte of bytes) bits += byte.toString(2).padStart(8, '0');
    for (let at = 0; at < bits.length; at += 5) out += ALPHABET[parseInt(bits.slice(at, at + 5).padEnd(5, '0'), 2)];
    return out;
}
function fromBase32(text) {
    let bits = '';
    for (const letter of text) {
        const value = ALPHABET.indexOf(letter);
        if (value < 0) throw new Error('base32: a character that it never has');
        bits += value.toString(2).padStart(5, '0');
    }
    const whole = bits.length - bits.length % 8;
    if (/1/.test(bits.slice(whole))) throw new Error('base32: bits are left over');
    return Buffer.from(bits.slice(0, whole).match(/.{8}/g)?.map(byte => parseInt(byte, 2)) ?? []);
}
/** CRC-16/CCITT-FALSE. */
function crc16(bytes) {
    let crc = 0xffff;
    for (const byte of bytes) {
        crc ^= byte << 8;
        for (let i = 0; i < 8; ++i) crc = crc & 0x8000 ? ((crc << 1) ^ 0x1021) & 0xffff : (crc << 1) & 0xffff;
    }
    return crc;
}

module.exports = { blake2b, deriveKey, hchacha20, aeadSeal, aeadOpen, poly1305, boxPublic, signPublic, sign, verify, exchange,
    sealTo, openSealed, toBase32, fromBase32, crc16 };
