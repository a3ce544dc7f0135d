#!/usr/bin/env python3
"""Asks `kelter answer` what comes next for a job. Needs Python 3.9 and nothing else.

    python3 client.py KELTER JOB.json

What may stand in a job and in an answer it knows by `kelter schema` alone.
"""
import json
import subprocess
import sys


def required(schema):
    """The members that the schema of an object asks for."""
    if "$ref" in schema and schema["$ref"].startswith("#/$defs/"):
        schema = schema["$defs"][schema["$ref"].rsplit("/", 1)[1]]
    return schema["required"]


def lacking(thing, schema):
    return [name for name in required(schema) if name not in thing]


def schema(kelter, name):
    told = subprocess.run([kelter, "schema", name], check=True, capture_output=True)
    return json.loads(told.stdout)


def name_of(format_id):
    """The name of a schema: that of kelter-diagnosis/4 is diagnosis."""
    return format_id.removeprefix("kelter-").split("/")[0]


def main(kelter, file):
    with open(file, encoding="utf-8") as text:
        job = json.load(text)
    missing = lacking(job, schema(kelter, "job"))
    if missing:
        sys.exit("the job lacks " + ", ".join(missing))
    with subprocess.Popen(
        [kelter, "answer"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, encoding="utf-8"
    ) as process:
        for command in ("next", "diagnose"):
            request = {"id": command, "command": command, "job": job}
            process.stdin.write(json.dumps(request) + "\n")
            process.stdin.flush()
            answer = json.loads(process.stdout.readline())
            result = answer["result"]
            if answer["exit-code"] != 0:
                sys.exit("\n".join(each["message"] for each in result["errors"]))
            missing = lacking(result, schema(kelter, name_of(result["format"])))
            if missing:
                sys.exit("the answer lacks " + ", ".join(missing))
            print(answer["id"] + ": " + told(result))
        process.stdin.close()


def told(result):
    if "step" not in result:
        return result["faults"][0]["title"] + f" ({result['faults'][0]['probability']:.0%})"
    if result["step"] == "ask":
        return result["question"]["question"]
    if result["step"] == "measure":
        return result["reading"]["component"] + ": " + result["reading"]["title"]
    return result["work"]["title"] if result["work"] else "nothing"


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    main(sys.argv[1], sys.argv[2])
