// Times the engine per solve, cold and warm, in this process: node time.mjs. With --json it prints the networks, their
// solutions and the times as one JSON text, for the benchmark program to put beside its own.
//
// Three systems: two rails behind a Y with four commanded injectors and a return regulator (12 links, as in the tests'
// TwoRails), and ladders of pipes with 40 and 400 links, a tank at one end and draws along them. Each is prepared once and
// solved again and again, from its starting flows or from those of the last solve; the figure is the best of several rounds, as noise only ever adds.

import { engineVersion, input, open, solve } from "./engine.mjs";

export function twoRails() {
    const nodes = ["pump", "filter", "Y", "A0", "A1", "B0", "B1", "join", "regulator", "return"];
    const hose = (name, from, to, length_m, bore_mm, K) => {
        return { name, type: "pipe", from, to, length_m, bore_mm, roughness_um: 1.5, K };
    };
    // Held open 35 L/h at 300 kPa; commanded 20 L/h, which it reaches at 98 kPa.
    const injector = (name, from) => {
        return { name, type: "capped_orifice", from, flow_L_h: 20, loss_kPa: 300 * (20 / 35) ** 2, commanded_L_h: 20 };
    };
    return {
        name: "12 links and 4 injectors",
        density_kg_m3: 740,
        viscosity_mm2_s: 0.5,
        nodes: [{ name: "tank", pressure_kPa: 0 }, ...nodes.map((name) => ({ name }))],
        links: [
            {
                name: "pump",
                type: "pump",
                from: "tank",
                to: "pump",
                points: [[0, 900], [108, 830], [288, 620], [450, 400]],
            },
            { name: "filter", type: "filter", from: "pump", to: "filter", flow_L_h: 200, linear_kPa: 10, quadratic_kPa: 10 },
            hose("feed", "filter", "Y", 3.5, 8, 3),
            hose("toA", "Y", "A0", 0.4, 8, 1.5),
            hose("railA", "A0", "A1", 0.35, 12, 0.5),
            hose("fromA", "A1", "join", 0.3, 8, 1),
            hose("toB", "Y", "B0", 0.6, 8, 1.5),
            hose("railB", "B0", "B1", 0.35, 12, 0.5),
            hose("fromB", "B1", "join", 0.5, 8, 1),
            hose("toRegulator", "join", "regulator", 0.5, 8, 1),
            {
                name: "regulator",
                type: "bypass_regulator",
                from: "regulator",
                to: "return",
                set_kPa: 300,
                reference_kPa: 0,
                open_loss_kPa: 9,
                open_flow_L_h: 200,
            },
            hose("return", "return", "tank", 3.5, 8, 3),
            injector("Afront", "A0"),
            injector("Arear", "A1"),
            injector("Bfront", "B0"),
            injector("Brear", "B1"),
        ],
    };
}

/** A ladder: two rails, a rung at each step; three links a step and one to feed it. */
export function ladder(links) {
    const steps = (links - 1) / 3;
    const nodes = [{ name: "tank", pressure_kPa: 400 }];
    const parts = [];
    const pipe = (from, to, bore_mm) => {
        const name = `H${parts.length}`;
        parts.push({ name, type: "pipe", from, to, length_m: 0.2, bore_mm, roughness_um: 1.5, K: 0.5 });
    };
    for (let i = 0; i <= steps; i++) {
        const draw_L_h = i === 0 ? 0 : 200 / steps;
        nodes.push({ name: `a${i}`, draw_L_h }, ...(i ? [{ name: `b${i}`, draw_L_h }] : []));
        if (i === 0) pipe("tank", "a0", 12);
        else {
            pipe(`a${i - 1}`, `a${i}`, 12);
            pipe(i === 1 ? "a0" : `b${i - 1}`, `b${i}`, 10);
            pipe(`a${i}`, `b${i}`, 8);
        }
    }
    return { name: `ladder of ${links} links`, density_kg_m3: 740, viscosity_mm2_s: 0.5, nodes, links: parts };
}

/** The same with draws in place of injectors, which deliver what is commanded anyway. */
export function withDraws(network) {
    const injectors = network.links.filter((l) => l.type === "capped_orifice");
    const draw = (node) => injectors.filter((l) => l.from === node).reduce((sum, l) => sum + l.commanded_L_h, 0);
    return {
        ...network,
        name: `${network.name}, as draws`,
        nodes: network.nodes.map((n) => (draw(n.name) ? { ...n, draw_L_h: draw(n.name) } : n)),
        links: network.links.filter((l) => !injectors.includes(l)),
    };
}

const COLD = 10; // flows as at the start
const WARM = 0; // flows as they were found

function time(network, start) {
    const project = open(input(network).text);
    const solve = () => {
        project.initH(start);
        project.runH();
    };
    try {
        for (let i = 0; i < 50; i++) solve();
        let best = Infinity;
        for (let round = 0; round < 15; round++) {
            const count = Math.max(5, Math.round(2e4 / network.links.length));
            const begin = process.hrtime.bigint();
            for (let i = 0; i < count; i++) solve();
            best = Math.min(best, Number(process.hrtime.bigint() - begin) / 1e3 / count);
        }
        return { microseconds: best, iterations: project.getStatistic(0) };
    } finally {
        project.closeH();
        project.close();
    }
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
    const timed = [twoRails(), withDraws(twoRails()), ladder(40), ladder(400)].map((network) => {
        return { network, cold: time(network, COLD), warm: time(network, WARM) };
    });
    if (process.argv.includes("--json")) {
        const networks = timed.map(({ network, cold, warm }) => {
            const { pressures, flows } = solve(network);
            return { ...network, engine: { pressure_kPa: pressures, flow_L_h: flows, cold, warm } };
        });
        console.log(JSON.stringify({ engine: engineVersion, node: process.version, networks }));
    } else {
        const text = ({ microseconds, iterations }) => `${microseconds.toFixed(1)} (${iterations} iterations)`;
        for (const { network, cold, warm } of timed) {
            console.log(`${network.name}: cold ${text(cold)}, warm ${text(warm)} microseconds`);
        }
    }
}
