// Asks `kelter answer` what comes next for a job. Needs Node 18 and nothing else.
//
//     node client.mjs KELTER JOB.json
//
// What may stand in a job and in an answer it knows by `kelter schema` alone.
import { execFileSync, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { createInterface } from "node:readline";

const [kelter, file] = process.argv.slice(2);
if (!file) {
  console.error("node client.mjs KELTER JOB.json");
  process.exit(2);
}

function schema(name) {
  return JSON.parse(execFileSync(kelter, ["schema", name], { maxBuffer: 1 << 24 }));
}

// The name of a schema: that of kelter-diagnosis/4 is diagnosis.
function nameOf(format) {
  return format.replace(/^kelter-/, "").split("/")[0];
}

function lacking(thing, whole) {
  const name = /^#\/\$defs\/(.*)$/.exec(whole.$ref ?? "")?.[1];
  const { required } = name ? whole.$defs[name] : whole;
  return required.filter((each) => !(each in thing));
}

function end(message) {
  console.error(message);
  process.exit(1);
}

function told(result) {
  if (!("step" in result)) {
    const [first] = result.faults;
    return `${first.title} (${Math.round(100 * first.probability)}%)`;
  }
  if (result.step === "ask") {
    return result.question.question;
  }
  if (result.step === "measure") {
    return `${result.reading.component}: ${result.reading.title}`;
  }
  return result.work?.title ?? "nothing";
}

const job = JSON.parse(readFileSync(file, "utf8"));
const missing = lacking(job, schema("job"));
if (missing.length > 0) {
  end(`the job lacks ${missing.join(", ")}`);
}
const answering = spawn(kelter, ["answer"], { stdio: ["pipe", "pipe", "inherit"] });
const lines = createInterface({ input: answering.stdout })[Symbol.asyncIterator]();
for (const command of ["next", "diagnose"]) {
  answering.stdin.write(`${JSON.stringify({ id: command, command, job })}\n`);
  const answer = JSON.parse((await lines.next()).value);
  if (answer["exit-code"] !== 0) {
    end(answer.result.errors.map((each) => each.message).join("\n"));
  }
  const lost = lacking(answer.result, schema(nameOf(answer.result.format)));
  if (lost.length > 0) {
    end(`the answer lacks ${lost.join(", ")}`);
  }
  console.log(`${answer.id}: ${told(answer.result)}`);
}
answering.stdin.end();
