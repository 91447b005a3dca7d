// Argon2id with one lane, from RFC 9106; for tests. 64-bit words are pairs of 32-bit ones, low first.
'use strict';
const { blake2b } = require('./primitives.js');

const u32 = value => {
    const out = Buffer.alloc(4);
    out.writeUInt32LE(value);
    return out;
};

/** Section 3.3: a hash of any length. */
function longHash(size, input) {
    const head = Buffer.concat([u32(size), input]);
    if (size <= 64) return blake2b(size, head);
    const parts = [];
    let last = blake2b(64, head), left = size;
    while (left > 64) {
        parts.push(last.subarray(0, 32));
        left -= 32;
        last = blake2b(left > 64 ? 64 : left, last);
    }
    parts.push(last);
    return Buffer.concat(parts);
}

/** a = a + b + 2 * low(a) * low(b), for the 64-bit words at `a` and `b` (section 3.6). */
function mix(v, a, b) {
    const x = v[a], y = v[b];
    const xl = x & 0xffff, xh = x >>> 16, yl = y & 0xffff, yh = y >>> 16;
    const ll = Math.imul(xl, yl) >>> 0, lh = Math.imul(xl, yh) >>> 0, hl = Math.imul(xh, yl) >>> 0, hh = Math.imul(xh, yh) >>> 0;
    const middle = (ll >>> 16) + (lh & 0xffff) + (hl & 0xffff);
    const low = ((middle << 16) | (ll & 0xffff)) >>> 0;
    const high = (hh + (lh >>> 16) + (hl >>> 16) + (middle >>> 16)) >>> 0;
    const doubledHigh = ((high << 1) | (low >>> 31)) >>> 0, doubledLow = (low << 1) >>> 0;
    const sum = x + y + doubledLow;
    v[a] = sum;
    v[a + 1] = v[a + 1] + v[b + 1] + doubledHigh + Math.floor(sum / 4294967296);
}

function turn(v, d, a, bits) {
    const low = v[d] ^ v[a], high = v[d + 1] ^ v[a + 1];
    if (bits === 32) { v[d] = high; v[d + 1] = low; }
    else if (bits === 63) { v[d] = (low << 1) | (high >>> 31); v[d + 1] = (high << 1) | (low >>> 31); }
    else { v[d] = (low >>> bits) | (high << (32 - bits)); v[d + 1] = (high >>> bits) | (low << (32 - bits)); }
}

function quarter(v, a, b, c, d) {
    mix(v, a, b); turn(v, d, a, 32); mix(v, c, d); turn(v, b, c, 24);
    mix(v, a, b); turn(v, d, a, 16); mix(v, c, d); turn(v, b, c, 63);
}

/** The permutation P on sixteen words at the given places. */
function permute(v, p) {
    for (let i = 0; i < 4; ++i) quarter(v, p[i], p[i + 4], p[i + 8], p[i + 12]);
    quarter(v, p[0], p[5], p[10], p[15]); quarter(v, p[1], p[6], p[11], p[12]);
    quarter(v, p[2], p[7], p[8], p[13]); quarter(v, p[3], p[4], p[9], p[14]);
}
const ROWS = [], COLUMNS = [];
for (let i = 0; i < 8; ++i) {
    ROWS.push(Array.from({ length: 16 }, (_, j) => 2 * (16 * i + j)));
    COLUMNS.push(Array.from({ length: 16 }, (_, j) => 2 * (2 * i + 16 * (j >> 1) + (j & 1))));
}

const r = new Uint32Array(256), z = new Uint32Array(256);
function fill(memory, into, x, y, xorOld) {
    for (let i = 0; i < 256; ++i) r[i] = memory[x + i] ^ memory[y + i];
    z.set(r);
    for (const row of ROWS) permute(z, row);
    for (const column of COLUMNS) permute(z, column);
    for (let i = 0; i < 256; ++i) memory[into + i] = (xorOld ? memory[into + i] : 0) ^ z[i] ^ r[i];
}

/** Version 0x13, one lane. */
function argon2id(secret, salt, passes, memoryKiB, size) {
    const lanes = 1, blocks = 4 * Math.floor(memoryKiB / 4), segment = blocks / 4;
    const h0 = blake2b(64, Buffer.concat([u32(lanes), u32(size), u32(memoryKiB), u32(passes), u32(0x13), u32(2),
        u32(secret.length), secret, u32(salt.length), salt, u32(0), u32(0)]));
    // Three more blocks behind the memory make the addresses that do not depend on the data.
    const memory = new Uint32Array(256 * (blocks + 3));
    const zero = 256 * blocks, input = zero + 256, addresses = input + 256;
    for (const i of [0, 1]) {
        const block = longHash(1024, Buffer.concat([h0, u32(i), u32(0)]));
        for (let j = 0; j < 256; ++j) memory[256 * i + j] = block.readUInt32LE(4 * j);
    }
    for (let pass = 0; pass < passes; ++pass)
        for (let slice = 0; slice < 4; ++slice) {
            const independent = pass === 0 && slice < 2;
            if (independent) {
                memory.fill(0, input, input + 256);
                [pass, 0, slice, blocks, passes, 2].forEach((word, i) => { memory[input + 2 * i] = word; });
            }
            for (let i = 0; i < segment; ++i) {
                const place = slice * segment + i;
                if (independent && i % 128 === 0) {
                    ++memory[input + 12];
                    fill(memory, addresses, zero, input, false);
                    fill(memory, addresses, zero, addresses, false);
                }
                if (pass === 0 && place < 2) continue;
                const before = (place + blocks - 1) % blocks;
                const j1 = independent ? memory[addresses + 2 * (i % 128)] : memory[256 * before];
                // Section 3.4.2: how many blocks may be referred to, and which.
                const area = pass === 0 ? place - 1 : blocks - segment + i - 1;
                const squared = Number((BigInt(j1) * BigInt(j1)) >> 32n);
                const relative = area - 1 - Number((BigInt(area) * BigInt(squared)) >> 32n);
                const start = pass === 0 || slice === 3 ? 0 : (slice + 1) * segment;
                fill(memory, 256 * place, 256 * before, 256 * ((start + relative) % blocks), pass > 0);
            }
        }
    const last = Buffer.alloc(1024);
    for (let j = 0; j < 256; ++j) last.writeUInt32LE(memory[256 * (blocks - 1) + j], 4 * j);
    return longHash(size, last);
}

module.exports = { argon2id };
