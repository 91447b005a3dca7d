// Argon2id from RFC 9106; for tests. 64-bit words are pairs of 32-bit ones, low first.
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

/** Section 3.4: the place in the memory that block `i` of a segment refers to. */
function referred(shape, at, j1, j2) {
    const { lanes, length, segment } = shape, { pass, slice, lane, i } = at;
    const from = pass === 0 && slice === 0 ? lane : j2 % lanes;
    const finished = pass === 0 ? slice * segment : length - segment;
    const area = from === lane ? finished + i - 1 : finished - (i === 0 ? 1 : 0);
    const squared = (BigInt(j1) * BigInt(j1)) >> 32n;
    const relative = area - 1 - Number((BigInt(area) * squared) >> 32n);
    const start = pass === 0 ? 0 : ((slice + 1) % 4) * segment;
    return from * length + (start + relative) % length;
}

/** One segment of a lane: a quarter of it. */
function fillSegment(memory, shape, at) {
    const { length, segment, blocks, passes } = shape, { pass, slice, lane } = at;
    const zero = 256 * blocks, input = zero + 256, addresses = input + 256;
    const independent = pass === 0 && slice < 2;
    if (independent) {
        memory.fill(0, input, input + 256);
        [pass, lane, slice, blocks, passes, 2].forEach((word, i) => { memory[input + 2 * i] = word; });
    }
    for (let i = 0; i < segment; ++i) {
        const place = slice * segment + i;
        if (independent && i % 128 === 0) {
            ++memory[input + 12];
            fill(memory, addresses, zero, input, false);
            fill(memory, addresses, zero, addresses, false);
        }
        if (pass === 0 && place < 2) continue;
        const before = lane * length + (place + length - 1) % length;
        const words = independent ? addresses + 2 * (i % 128) : 256 * before;
        const other = referred(shape, { ...at, i }, memory[words], memory[words + 1]);
        fill(memory, 256 * (lane * length + place), 256 * before, 256 * other, pass > 0);
    }
}

/** Version 0x13. `more`: lanes, key and data, of which the project's formats use none. */
function argon2id(secret, salt, passes, memoryKiB, size, more = {}) {
    const { lanes = 1, key = Buffer.alloc(0), data = Buffer.alloc(0) } = more;
    const segment = Math.floor(memoryKiB / (4 * lanes)), length = 4 * segment, blocks = lanes * length;
    const h0 = blake2b(64, Buffer.concat([u32(lanes), u32(size), u32(memoryKiB), u32(passes), u32(0x13), u32(2),
        u32(secret.length), secret, u32(salt.length), salt, u32(key.length), key, u32(data.length), data]));
    // Three more blocks behind the memory make the addresses that do not depend on the data.
    const memory = new Uint32Array(256 * (blocks + 3));
    for (let lane = 0; lane < lanes; ++lane)
        for (const i of [0, 1]) {
            const block = longHash(1024, Buffer.concat([h0, u32(i), u32(lane)]));
            for (let j = 0; j < 256; ++j) memory[256 * (lane * length + i) + j] = block.readUInt32LE(4 * j);
        }
    const shape = { lanes, length, segment, blocks, passes };
    for (let pass = 0; pass < passes; ++pass)
        for (let slice = 0; slice < 4; ++slice)
            for (let lane = 0; lane < lanes; ++lane) fillSegment(memory, shape, { pass, slice, lane });
    const last = Buffer.alloc(1024);
    for (let j = 0; j < 256; ++j) {
        let word = 0;
        for (let lane = 0; lane < lanes; ++lane) word ^= memory[256 * ((lane + 1) * length - 1) + j];
        last.writeUInt32LE(word >>> 0, 4 * j);
    }
    return longHash(size, last);
}

module.exports = { argon2id };
