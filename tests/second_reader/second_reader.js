// node second_reader.js published | read FILE | write FILE
//
// published: the primitives against published vectors. read: opens what core wrote, and refuses it with any bit
// changed. write: writes what core must open.
'use strict';
const fs = require('fs');
const crypto = require('crypto');
const p = require('./primitives.js');
const f = require('./formats.js');

const hex = value => Buffer.from(value, 'hex');
const string = bytes => bytes.toString('hex');
let checked = 0, failed = 0;
function same(what, got, wanted) {
    ++checked;
    if (String(got) === String(wanted)) return;
    ++failed;
    console.log(`FAILED ${what}: ${got}, wanted ${wanted}`);
}
function refused(what, attempt) {
    ++checked;
    try { attempt(); } catch { return; }
    ++failed;
    console.log(`FAILED ${what}: it was taken`);
}
const flipped = (bytes, bit) => {
    const other = Buffer.from(bytes);
    other[bit >> 3] ^= 1 << (bit & 7);
    return other;
};

function read(vectors) {
    for (const v of vectors.envelopes) {
        const envelope = hex(v.envelope), sender = p.signPublic(hex(v.senderSeed)), secret = hex(v.recipientSecret);
        const opened = f.openEnvelope(envelope, sender, secret);
        same('envelope kind', opened.kind, v.kind);
        same('envelope mailbox', string(opened.mailbox), v.mailbox);
        same('envelope sequence', opened.sequence, v.sequence);
        same('envelope chain', string(opened.previous), v.previous);
        same('envelope epoch', opened.epoch, v.epoch);
        same('envelope text', string(opened.plaintext), v.plaintext);
        same('envelope hash', string(opened.hash), v.hash);
        // Every 97th bit: each field is hit, and it stays quick.
        for (let bit = 0; bit < 8 * Math.min(envelope.length, 2000); bit += 97)
            refused(`envelope with bit ${bit} changed`, () => f.openEnvelope(flipped(envelope, bit), sender, secret));
    }
    for (const v of vectors.keyFiles)
        for (const way of v.ways) {
            const dataKey = f.openKeyFile(hex(v.file), way.kind, hex(way.secret), hex(way.keystore));
            same('data key', string(dataKey), v.dataKey);
            same('database key', string(f.databaseKey(dataKey)), v.databaseKey);
            refused('key file with another secret', () => f.openKeyFile(hex(v.file), way.kind, Buffer.from('another'), hex(way.keystore)));
        }
    for (const v of vectors.offers) {
        const o = f.fromQrText(v.text);
        for (const name of ['id', 'secret', 'root', 'epochKey', 'hubKeyHash']) same(`offer ${name}`, string(o[name]), v[name]);
        for (const name of ['tls', 'expires', 'epoch', 'hub']) same(`offer ${name}`, o[name], v[name]);
        same('offer text', f.toQrText(o), v.text);
    }
    for (const v of vectors.typedCodes) {
        const code = f.fromTypedCode(v.text);
        same('typed locator', string(code.locator), v.locator);
        same('typed secret', string(code.secret), v.secret);
        const secrets = f.typedSecrets(code.locator, code.secret);
        same('typed offer secret', string(secrets.offerSecret), v.offerSecret);
        same('typed bundle key', string(secrets.bundleKey), v.bundleKey);
        same('typed text', f.toTypedCode(code.locator, code.secret), v.text);
    }
    for (const v of vectors.recoveryCodes) {
        same('recovery bytes', string(f.fromRecoveryCode(v.text)), v.bytes);
        same('recovery text', f.toRecoveryCode(hex(v.bytes)), v.text);
    }
    for (const v of vectors.confirmations) same('confirmation', f.confirmationNumber(hex(v.signing), hex(v.box), hex(v.nonce)), v.number);
    for (const v of vectors.links) {
        const root = p.signPublic(hex(v.rootSeed)), l = f.openLink(hex(v.signed), root);
        for (const name of ['mailbox', 'phone', 'desk']) same(`link ${name}`, string(l[name]), v[name]);
        same('link name', l.clinicName, v.clinicName);
        refused('link with a bit changed', () => f.openLink(flipped(hex(v.signed), 200), root));
    }
    for (const v of vectors.statements) {
        const signed = hex(v.signed), root = p.signPublic(hex(v.rootSeed)), s = f.openStatement(signed, root);
        for (const [name, value] of Object.entries(s)) same(`statement ${name}`, Buffer.isBuffer(value) ? string(value) : value, v[name]);
        same('statement signed anew', string(f.signStatement(s, hex(v.rootSeed))), v.signed);
        for (let bit = 0; bit < 8 * signed.length; bit += 31) refused(`statement with bit ${bit} changed`, () => f.openStatement(flipped(signed, bit), root));
    }
}

function write() {
    const random = size => crypto.randomBytes(size);
    const envelopes = [0, 1, 500, 1023, 1024, 8191, 8192, 30000, 200000].map((size, i) => {
        const senderSeed = random(32), recipientSecret = random(32);
        const recipients = [p.boxPublic(recipientSecret)];
        for (let other = 0; other < i % 3; ++other) recipients.push(p.boxPublic(random(32)));
        const e = { kind: 1 + i % 5, mailbox: random(16), senderSeed, sequence: i === 8 ? 2n ** 53n + 1n : i + 1, previous: random(32), epoch: i,
            recipients, plaintext: random(size) };
        const envelope = f.sealEnvelope(e);
        return { kind: e.kind, mailbox: string(e.mailbox), senderSeed: string(senderSeed), recipientSecret: string(recipientSecret),
            sequence: String(e.sequence), previous: string(e.previous), epoch: e.epoch, plaintext: string(e.plaintext), envelope: string(envelope),
            hash: string(p.blake2b(32, envelope)) };
    });
    const dataKey = random(32);
    const ways = [{ kind: 2, secret: Buffer.from('three calm herons wade'), keystore: Buffer.alloc(0) }, { kind: 1, secret: Buffer.from('271828'), keystore: random(32) },
        { kind: 3, secret: random(20), keystore: Buffer.alloc(0) }];
    const file = f.makeKeyFile(ways.map((way, i) => ({ ...way, passes: 1 + i, memoryKiB: 8192 })), dataKey);
    const offers = ['hub.example:8443', '[2001:db8::1]:443', 'h'].map((hub, i) => {
        const o = { tls: i !== 2, expires: 1800000000 + i, id: random(8), secret: random(16), root: random(32), epochKey: random(32), epoch: i, hubKeyHash: random(32), hub };
        const fields = Object.fromEntries(Object.entries(o).map(([k, v]) => [k, Buffer.isBuffer(v) ? string(v) : v]));
        return { ...fields, expires: String(o.expires), text: f.toQrText(o) };
    });
    const locator = random(4), secret = random(9), secrets = f.typedSecrets(locator, secret);
    const recovery = [random(20), random(20)];
    const nonce = random(16), signing = random(32), box = random(32), rootSeed = random(32);
    const link = { mailbox: random(16), phone: random(32), desk: random(32), clinicName: 'Praxis an der Mole – عيادة' };
    const statements = [{ type: 'replaced', mailbox: random(16), phone: random(16), held: 12, at: 1800000000123 }, { type: 'ended', device: random(16), at: 1800000000456 },
        { type: 'least', number: 3, protocol: 2, at: 1800000000789 }].map(s => {
        const fields = Object.fromEntries(Object.entries(s).map(([k, v]) => [k, k === 'type' ? v : Buffer.isBuffer(v) ? string(v) : String(v)]));
        return { ...fields, rootSeed: string(rootSeed), signed: string(f.signStatement(s, rootSeed)) };
    });
    return { envelopes, statements,
        keyFiles: [{ dataKey: string(dataKey), databaseKey: string(f.databaseKey(dataKey)), file: string(file),
            ways: ways.map(w => ({ kind: w.kind, secret: string(w.secret), keystore: string(w.keystore) })) }],
        offers,
        typedCodes: [{ locator: string(locator), secret: string(secret), offerSecret: string(secrets.offerSecret), bundleKey: string(secrets.bundleKey),
            text: f.toTypedCode(locator, secret) }],
        recoveryCodes: recovery.map(bytes => ({ bytes: string(bytes), text: f.toRecoveryCode(bytes) })),
        confirmations: [{ signing: string(signing), box: string(box), nonce: string(nonce), number: f.confirmationNumber(signing, box, nonce) }],
        links: [{ rootSeed: string(rootSeed), mailbox: string(link.mailbox), phone: string(link.phone), desk: string(link.desk), clinicName: link.clinicName,
            signed: string(f.signLink(link, rootSeed)) }] };
}

const [mode, file] = process.argv.slice(2);
if (mode === 'published') {
    process.exitCode = require('./published_vectors.js').check() ? 0 : 1;
} else if (mode === 'read' && file) {
    read(JSON.parse(fs.readFileSync(file, 'utf8')));
    console.log(`second reader: ${checked} checks, ${failed} failed`);
    process.exitCode = failed === 0 && checked > 500 ? 0 : 1;
} else if (mode === 'write' && file) {
    fs.writeFileSync(file, JSON.stringify(write(), null, 1) + '\n');
} else {
    console.error('usage: node second_reader.js published | read FILE | write FILE');
    process.exitCode = 2;
}
