// Puts a network to the engine and reads its answer.
//
// The engine's own absolute constants (a closed link leaks head/1e8 in its units, statuses have tolerances) blur a
// network of our size. So it is given an exactly similar one, SCALE times larger: lengths, bores, roughness and viscosity
// times SCALE, flows times its square, heads the same. Reynolds numbers, relative roughness and heads stay what they were.
//
// The engine computes in feet and cubic feet per second with g = 32.2 ft/s2 and a minor-loss constant of 0.02517 (which
// stands for 8/(pi2 g)). It is spoken to in just these units, so that it converts nothing; heads are turned into pressures
// with its own g, heights are given as the head that they are worth in it, and loss coefficients make up for the constant.

import { Project, Workspace } from "epanet-js";

export const SCALE = 300;
export const GRAVITY = 9.80665;
const FOOT = 0.3048;
const ENGINE_G = 32.2; // ft/s2
const MINOR = 0.02517;
const PSI_PER_FOOT = 0.4333;
const ENGINE_VISCOSITY = 1.1e-5; // ft2/s: a viscosity is given as a multiple of it

const workspace = new Workspace();
await workspace.loadModule();
export const engineVersion = workspace.version;

export const TRIALS = 500;

export const OPTIONS = [
    "UNITS CFS",
    "HEADLOSS D-W",
    "ACCURACY 0.00001",
    "HEADERROR 1e-9",
    "FLOWCHANGE 1e-7",
    `TRIALS ${TRIALS}`,
    "UNBALANCED STOP",
    "CHECKFREQ 2",
    "MAXCHECK 10",
    "QUALITY NONE",
    "SPECIFIC GRAVITY 1",
    "EMITTER EXPONENT 0.5",
];

/** How a network's quantities read in the engine's units. */
export class Similar {
    constructor(network) {
        this.density = network.density_kg_m3;
        this.kinematicViscosity = network.viscosity_mm2_s * 1e-6;
    }

    // Pa in a foot of head.
    get pascals() {
        return this.density * ENGINE_G * FOOT * FOOT;
    }

    head(kilopascals) {
        return (kilopascals * 1000) / this.pascals;
    }

    setting(kilopascals) {
        return this.head(kilopascals) * PSI_PER_FOOT;
    }

    // A height counts by what it weighs.
    height(meters) {
        return (meters * GRAVITY) / (ENGINE_G * FOOT * FOOT);
    }

    kilopascals(head, meters) {
        return (head * this.pascals - this.density * GRAVITY * meters) / 1000;
    }

    flow(litersPerHour) {
        return ((litersPerHour / 3.6e6) * SCALE ** 2) / FOOT ** 3;
    }

    litersPerHour(flow) {
        return ((flow * FOOT ** 3) / SCALE ** 2) * 3.6e6;
    }

    length(meters) {
        return (meters * SCALE) / FOOT;
    }

    inches(millimeters) {
        return ((millimeters / 1000) * SCALE * 12) / FOOT;
    }

    get viscosity() {
        return (this.kinematicViscosity * SCALE) / FOOT ** 2 / ENGINE_VISCOSITY;
    }

    coefficient(k) {
        return (k * 8) / (Math.PI ** 2 * ENGINE_G * MINOR);
    }

    // Loss coefficient of a valve with a bore of one foot that loses so much at such a flow.
    valve(kilopascals, litersPerHour) {
        return this.head(kilopascals) / this.flow(litersPerHour) ** 2 / MINOR;
    }

    // A pipe of 1 m bore is laminar at all our flows: its loss is exactly a q, and its coefficient adds b q2.
    porous(litersPerHour, linear, quadratic) {
        const q = litersPerHour / 3.6e6;
        const dynamicViscosity = this.kinematicViscosity * this.density;
        const meters = ((linear * 1000) / q) * (Math.PI / (128 * dynamicViscosity));
        const k = (2 * quadratic * 1000 * (Math.PI / 4) ** 2) / (this.density * q * q);
        return `${this.length(meters || 1e-9)} ${this.inches(1000)} 1 ${this.coefficient(k)}`;
    }

    // A check valve that loses b q2: a one-way pipe with no length to speak of (a nanometer).
    oneWay(litersPerHour, kilopascals) {
        const q = litersPerHour / 3.6e6;
        const k = (2 * kilopascals * 1000 * ((Math.PI / 4) * 1e-4) ** 2) / (this.density * q * q);
        return `${this.length(1e-9)} ${this.inches(10)} 1 ${this.coefficient(k)} CV`;
    }
}

/** The engine's input: one text, and which of its links and emitters stand for which of ours. */
export function input(network) {
    const to = new Similar(network);
    const section = { RESERVOIRS: [], JUNCTIONS: [], EMITTERS: [], PIPES: [], PUMPS: [], CURVES: [], VALVES: [] };
    const height = Object.fromEntries(network.nodes.map((n) => [n.name, n.height_m ?? 0]));
    const pressureDriven = network.links.find((l) => l.type === "capped_orifice");
    const draws = Object.fromEntries(network.nodes.filter((n) => n.draw_L_h).map((n) => [n.name, to.flow(n.draw_L_h)]));
    const emitters = {};
    const options = [...OPTIONS, `VISCOSITY ${to.viscosity}`];

    for (const l of network.links) {
        const ends = `${l.name} ${l.from} ${l.to}`;
        switch (l.type) {
            case "pipe":
            case "check_pipe": {
                const rough = (l.roughness_um * 1e-6 * SCALE * 1000) / FOOT;
                const status = l.type === "pipe" ? "OPEN" : "CV";
                const size = `${to.length(l.length_m)} ${to.inches(l.bore_mm)} ${rough}`;
                section.PIPES.push(`${ends} ${size} ${to.coefficient(l.K)} ${status}`);
                break;
            }
            case "fitting": {
                const area = (Math.PI / 4) * (l.bore_mm / 1000) ** 2;
                const loss = (l.K * network.density_kg_m3 * (1 / 3600 / area) ** 2) / 2 / 1000; // kPa at 1 m3/h
                section.VALVES.push(`${ends} 12 TCV ${to.valve(loss, 1000)} 0`);
                break;
            }
            case "filter":
                section.PIPES.push(`${ends} ${to.porous(l.flow_L_h, l.linear_kPa, l.quadratic_kPa)} OPEN`);
                break;
            case "check_valve":
                section.PIPES.push(`${ends} ${to.oneWay(l.flow_L_h, l.loss_kPa)}`);
                break;
            case "pump":
                section.PUMPS.push(`${ends} HEAD C${l.name} SPEED ${l.speed ?? 1}`);
                for (const [flow, rise] of l.points) {
                    section.CURVES.push(`C${l.name} ${to.flow(flow)} ${to.head(rise)}`);
                }
                break;
            case "bypass_regulator":
            case "reducing_regulator": {
                const bypass = l.type === "bypass_regulator";
                const inner = `X${l.name}`;
                let [from, end] = [l.from, l.to];
                if (l.slope_kPa) {
                    // A held pressure that moves with flow: a laminar passage on the held side.
                    const held = bypass ? l.from : l.to;
                    section.JUNCTIONS.push(`${inner} ${to.height(height[held])} 0`);
                    const passage = `S${l.name} ${bypass ? `${l.from} ${inner}` : `${inner} ${l.to}`}`;
                    section.PIPES.push(`${passage} ${to.porous(l.slope_flow_L_h, l.slope_kPa, 0)} OPEN`);
                    if (bypass) from = inner;
                    else end = inner;
                }
                const setting = to.setting(l.set_kPa + l.reference_kPa);
                const open = to.valve(l.open_loss_kPa, l.open_flow_L_h);
                section.VALVES.push(`${l.name} ${from} ${end} 12 ${bypass ? "PSV" : "PRV"} ${setting} ${open}`);
                break;
            }
            case "orifice":
                if (l.engine === "emitter") {
                    const flow = to.flow(l.flow_L_h) / Math.sqrt(to.setting(l.loss_kPa));
                    section.EMITTERS.push(`${l.from} ${flow}`);
                    emitters[l.name] = l.from;
                    if (!l.backflow) options.push("BACKFLOW ALLOWED NO");
                } else {
                    const space = `X${l.name}`;
                    section.RESERVOIRS.push(`${space} ${to.head(l.space_kPa) + to.height(height[l.from])}`);
                    if (l.backflow) {
                        section.VALVES.push(`${l.name} ${l.from} ${space} 12 TCV ${to.valve(l.loss_kPa, l.flow_L_h)} 0`);
                    } else {
                        section.PIPES.push(`${l.name} ${l.from} ${space} ${to.oneWay(l.flow_L_h, l.loss_kPa)}`);
                    }
                }
                break;
            case "capped_orifice":
                // A demand that falls with the root of pressure below the pressure at which it is held open all the time.
                draws[l.from] = to.flow(l.commanded_L_h);
                break;
            default:
                throw new Error(`Unknown link type ${l.type}.`);
        }
    }

    for (const n of network.nodes) {
        if (n.pressure_kPa !== undefined) {
            section.RESERVOIRS.push(`${n.name} ${to.head(n.pressure_kPa) + to.height(height[n.name])}`);
        } else {
            section.JUNCTIONS.push(`${n.name} ${to.height(height[n.name])} ${draws[n.name] ?? 0}`);
        }
    }
    if (pressureDriven) {
        options.push("DEMAND MODEL PDA", "MINIMUM PRESSURE 0", "PRESSURE EXPONENT 0.5");
        options.push(`REQUIRED PRESSURE ${to.setting(pressureDriven.loss_kPa)}`);
    }
    const text = Object.entries({ ...section, OPTIONS: [...new Set(options)] })
        .map(([name, lines]) => `[${name}]\n${lines.join("\n")}\n`)
        .join("\n");
    return { text: `[TITLE]\n${network.name}\n\n${text}\n[END]\n`, emitters, to };
}

/** Opens a network in the engine. Close what it returns. */
export function open(text) {
    const project = new Project(workspace);
    workspace.writeFile("network.inp", text);
    try {
        project.open("network.inp", "report.txt", "");
    } catch (error) {
        throw new Error(workspace.readFile("report.txt").replace(/\s+/g, " ").trim() || error.message);
    }
    project.openH();
    return project;
}

const HEAD = 10;
const DEMAND_FLOW = 31;
const EMITTER_FLOW = 29;
const FLOW = 8;
const STATUS = 11;

/** The package says the engine's warnings to the console and hands none back. */
function warningsOf(run) {
    const said = [];
    const console_ = console.warn;
    console.warn = (text) => said.push(String(text).replace(/^epanet-js /, ""));
    try {
        run();
    } finally {
        console.warn = console_;
    }
    return said;
}

/** Solves a network from a cold start: what the engine found, in the network's units, and what it says about it. */
export function solve(network) {
    const { text, emitters, to } = input(network);
    const project = open(text);
    try {
        project.initH(10); // flows initialized, nothing saved
        const warnings = warningsOf(() => project.runH());
        const pressures = {};
        for (const n of network.nodes) {
            const head = project.getNodeValue(project.getNodeIndex(n.name), HEAD);
            pressures[n.name] = to.kilopascals(head, n.height_m ?? 0);
        }
        const flows = {};
        const closed = new Set();
        for (const l of network.links) {
            if (l.name in emitters) {
                flows[l.name] = to.litersPerHour(project.getNodeValue(project.getNodeIndex(l.from), EMITTER_FLOW));
            } else if (l.type === "capped_orifice") {
                flows[l.name] = to.litersPerHour(project.getNodeValue(project.getNodeIndex(l.from), DEMAND_FLOW));
            } else {
                const index = project.getLinkIndex(l.name);
                flows[l.name] = to.litersPerHour(project.getLinkValue(index, FLOW));
                if (project.getLinkValue(index, STATUS) === 0) closed.add(l.name);
            }
        }
        const statistic = (i) => project.getStatistic(i);
        return {
            warnings,
            iterations: statistic(0),
            headError_kPa: (statistic(2) * to.pascals) / 1000,
            flowChange_L_h: to.litersPerHour(statistic(3)),
            pressures,
            flows,
            closed,
        };
    } finally {
        project.closeH();
        project.close();
    }
}
