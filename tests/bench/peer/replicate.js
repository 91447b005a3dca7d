// replicate.js FOLDER: entries.jsonl from one database to a hub over HTTP, and on to another; the hub runs in a process of its own.
// Prints one line that replication_bench reads.
"use strict";
const { fork } = require("child_process");
const fs = require("fs");
const path = require("path");
const PouchDB = require("pouchdb");

const folder = process.argv[2];

function hub() {
    const express = require("express");
    const app = express();
    fs.mkdirSync(path.join(folder, "hub"));
    app.use("/", require("express-pouchdb")(PouchDB.defaults({ prefix: path.join(folder, "hub") + path.sep }),
        { mode: "minimumForPouchDB", inMemoryConfig: true, logPath: path.join(folder, "hub.log") }));
    let bytes = 0;
    const sockets = new Set();
    const server = app.listen(0, "127.0.0.1", () => process.send({ port: server.address().port }));
    server.on("connection", (socket) => {
        sockets.add(socket);
        socket.on("close", () => { bytes += socket.bytesRead + socket.bytesWritten; sockets.delete(socket); });
    });
    process.on("message", () => {
        let all = bytes;
        for (const socket of sockets) all += socket.bytesRead + socket.bytesWritten;
        process.send({ bytes: all });
    });
}

function answerOf(child) {
    return new Promise((resolve) => child.once("message", resolve));
}

async function replicated(documents, name, address) {
    const phone = new PouchDB(path.join(folder, name + "-phone"));
    const desk = new PouchDB(path.join(folder, name + "-desk"));
    await phone.bulkDocs(documents);
    // Large batches: with those it has by default it is slower.
    const options = { batch_size: 1000 };
    const began = process.hrtime.bigint();
    await phone.replicate.to(address + name, options);
    await desk.replicate.from(address + name, options);
    const ms = Number(process.hrtime.bigint() - began) / 1e6;
    const count = (await desk.info()).doc_count;
    if (count !== documents.length) throw new Error(`${count} of ${documents.length} documents arrived`);
    await phone.close();
    await desk.close();
    return ms;
}

async function main() {
    const documents = fs.readFileSync(path.join(folder, "entries.jsonl"), "utf8").trim().split("\n").map((line) => JSON.parse(line));
    const child = fork(__filename, [folder, "hub"], { stdio: ["ignore", "ignore", "inherit", "ipc"] });
    const { port } = await answerOf(child);
    const address = `http://127.0.0.1:${port}/`;
    const course = await replicated(documents.slice(0, 132), "course", address);
    child.send("bytes");
    const before = (await answerOf(child)).bytes;
    const ms = await replicated(documents, "all", address);
    child.send("bytes");
    const bytes = (await answerOf(child)).bytes - before;
    console.log(`replicated ${ms.toFixed(0)} ms ${bytes} bytes, course ${course.toFixed(1)} ms`);
    child.kill();
    process.exit(0);
}

if (process.argv[3] === "hub") hub();
else main().catch((problem) => { console.error(problem); process.exit(1); });
