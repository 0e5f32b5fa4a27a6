// Makes the solved networks that FuelMath's tests compare with: node make.mjs

import { writeFileSync } from "node:fs";
import { networks } from "./cases.mjs";
import { OPTIONS, SCALE, TRIALS, engineVersion, solve } from "./engine.mjs";
import { examine } from "./laws.mjs";

const target = new URL("../FuelMath.Tests/Networks/Oracle/solved-networks.json", import.meta.url);
const twelve = (x) => Number(x.toPrecision(12));
const kept = [];
const dropped = [];
const unsettled = [];

for (const network of networks()) {
    let answer;
    try {
        answer = solve(network);
    } catch (error) {
        dropped.push([network.name, `the engine refuses it: ${error.message}`]);
        continue;
    }
    const { wrong, states, undetermined } = examine(network, answer);
    for (const warning of answer.warnings) {
        // A pump that its check valve holds shut is one of the states to compare; the engine warns of it.
        const atRest = network.links.some((l) => l.type === "pump" && states[l.name] !== "running");
        if (!(atRest && warning.startsWith("(Warning 4)"))) wrong.unshift(`the engine says ${warning}`);
    }
    if (answer.iterations >= TRIALS) {
        unsettled.push(network);
        dropped.push([network.name, `the engine does not settle in ${TRIALS} trials`]);
        continue;
    }
    if (wrong.length) {
        dropped.push([network.name, wrong.join("; ")]);
        continue;
    }
    const sought = network.nodes.filter((n) => n.pressure_kPa === undefined && !undetermined.includes(n.name));
    kept.push({
        ...network,
        engine: {
            iterations: answer.iterations,
            pressure_kPa: Object.fromEntries(sought.map((n) => [n.name, twelve(answer.pressures[n.name])])),
            flow_L_h: Object.fromEntries(network.links.map((l) => [l.name, twelve(answer.flows[l.name])])),
            state: states,
            undetermined,
        },
    });
}

const head = {
    source: "[Rossman-2020] the engine, through the npm package epanet-js 0.9.0",
    made: "by tests/oracle/make.mjs, whose README says how and what everything means; all networks are invented",
    engine: engineVersion,
    scale: SCALE,
    options: OPTIONS,
    dropped: Object.fromEntries(dropped),
};
const list = (name, networks) => `  "${name}": [\n${networks.map((n) => `    ${JSON.stringify(n)}`).join(",\n")}\n  ]`;
const lists = `${list("networks", kept)},\n${list("unsettled", unsettled)}`;
writeFileSync(target, `${JSON.stringify(head, null, 2).slice(0, -2)},\n${lists}\n}\n`);

const links = kept.map((n) => n.links.length);
console.log(`${kept.length} networks kept, of ${Math.min(...links)} to ${Math.max(...links)} links`);
console.log(`${dropped.length} dropped`);
for (const [name, why] of dropped) console.log(`  ${name}: ${why}`);
