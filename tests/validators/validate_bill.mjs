// Validates a bill of materials against the whole published schema of CycloneDX, by the library of those who publish it. Then each
// way to spoil it below must be refused, or the validator sees nothing.
//
// usage: node validate_bill.mjs BILL
import { readFileSync } from 'node:fs';
import { Spec, Validation } from '@cyclonedx/cyclonedx-library';

const text = readFileSync(process.argv[2], 'utf8');
const validator = new Validation.JsonStrictValidator(Spec.Version.v1dot5);
const refused = await validator.validate(text);
if (refused !== null) {
    console.error(JSON.stringify(refused, null, 1));
    process.exit(1);
}
const ways = [
    ['of a type that is none', bill => { bill.components[0].type = 'wish'; }],
    ['with a component without a name', bill => { delete bill.components[0].name; }],
    ['with a serial number that is none', bill => { bill.serialNumber = 'seven'; }],
    ['with a hash that is too short', bill => { bill.components.find(part => part.hashes).hashes[0].content = 'abc'; }],
    ['with a key of nobody', bill => { bill.components[0].threads = 6; }],
    ['with a time that is none', bill => { bill.metadata.timestamp = 'noon'; }],
    ['with a dependency without a reference', bill => { delete bill.dependencies[0].ref; }],
];
for (const [what, spoil] of ways) {
    const bill = JSON.parse(text);
    spoil(bill);
    if (await validator.validate(JSON.stringify(bill)) === null) {
        console.error(`a bill ${what} is not refused`);
        process.exit(1);
    }
}
console.log(`${JSON.parse(text).components.length} components are a sound CycloneDX bill; ${ways.length} spoilt ones are refused`);
