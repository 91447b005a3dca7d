// The second reader's own primitives against published vectors, before anything is read with them.
'use strict';
const p = require('./primitives.js');
const { argon2id } = require('./argon2.js');

const hex = text => Buffer.from(text, 'hex');
const range = (from, count) => Buffer.from(Array.from({ length: count }, (_, i) => from + i));
const cases = [
    ['RFC 7693, appendix A: BLAKE2b-512("abc")', () => p.blake2b(64, Buffer.from('abc')),
        'ba80a53f981c4d0d6a2797b69f12f6e94c212f14685ac4b74b12bb6fdbffa2d17d87c5392aab792dc252d5de4533cc9518d38aa8dbf1925ab92386edd4009923'],
    ['draft-irtf-cfrg-xchacha-03, 2.2.1: HChaCha20', () => p.hchacha20(range(0, 32), hex('000000090000004a0000000031415927')),
        '82413b4227b27bfed30e42508a877d73a0f9e4d58a74a853c12ec41326d3ecdc'],
    ['RFC 8439, 2.5.2: Poly1305', () => p.poly1305(hex('85d6be7857556d337f4452fe42d506a80103808afb0db2fd4abff6af4149f51b'),
        Buffer.from('Cryptographic Forum Research Group')), 'a8061dc1305136c6c22b8baf0c0127a9'],
    ['draft-irtf-cfrg-xchacha-03, A.3.1: the tag', () => p.aeadSeal(range(0x80, 32), range(0x40, 24), hex('50515253c0c1c2c3c4c5c6c7'),
        Buffer.from("Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the future, sunscreen would be it."))
        .subarray(-16), 'c0875924c1c7987947deafd8780acf49'],
    ['RFC 7748, 6.1: X25519', () => p.exchange(hex('77076d0a7318a57d3c16c17251b26645df4c2f87ebc0992ab177fba51db92c2a'),
        hex('de9edb7d7b7dc1b4d35b61c2ece435373f8343c85b78674dadfc7e146f882b4f')),
    '4a5d9d5ba4ce2de1728e3bf480350f25e07e21c947d19e3376f09b3c1e161742'],
    ['RFC 8032, 7.1, test 2: Ed25519', () => p.sign(hex('4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb'), hex('72')),
        '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00'],
    ['RFC 4648, 10: base32', () => Buffer.from(p.toBase32(Buffer.from('foobar'))), Buffer.from('MZXW6YTBOI').toString('hex')],
    ['CRC-16/CCITT-FALSE, check value', () => hex(p.crc16(Buffer.from('123456789')).toString(16)), '29b1'],
    ['RFC 9106, 5.3: Argon2id with four lanes, a key and data', () => argon2id(Buffer.alloc(32, 1), Buffer.alloc(16, 2), 3, 32, 32,
        { lanes: 4, key: Buffer.alloc(8, 3), data: Buffer.alloc(12, 4) }),
    '0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659'],
    // Of the shape that the formats use; computed by libsodium and by pyca/cryptography.
    ['Argon2id, one lane, 3 passes, 64 MiB', () => argon2id(Buffer.from('123456'), range(0, 16), 3, 65536, 32),
        '9b0a9f24be07d83998f657d86a216621de37af21b9d3133fab03035e94fd58ec'],
    ['BLAKE2b with salt and personalisation as crypto_kdf, key 0..31, number 1, "eb-vault"', () => p.deriveKey(range(0, 32), 1, 'eb-vault'),
        'd6be6552bd40b38da09b55930ff1df353f41ad7531b1be0798fdea4a6a664a6a'],
];

function check() {
    let failed = 0;
    for (const [name, compute, wanted] of cases) {
        const got = compute().toString('hex');
        if (got !== wanted) {
            ++failed;
            console.log(`FAILED ${name}: ${got}`);
        }
    }
    console.log(`published vectors: ${cases.length - failed} of ${cases.length} hold`);
    return failed === 0;
}
module.exports = { check };
