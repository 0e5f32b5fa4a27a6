// Looks at an answer with the laws themselves, written down a second time and apart from the engine: does mass balance,
// does each link lose what its law says, is each one-way part in a state that its pressures allow? An answer that fails
// is dropped, with its reason. It also names the states
// and the nodes whose pressure is not determined.

const GRAVITY = 9.80665;

/** Darcy's factor as the engine has it: 64/Re to 2000, Dunlop's cubic, Swamee and Jain from 4000. */
export function frictionFactor(reynolds, relativeRoughness) {
    if (reynolds <= 2000) return 64 / reynolds;
    if (reynolds >= 4000) {
        return 0.25 / Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
    }
    const tail = 5.74 / 4000 ** 0.9;
    const y2 = relativeRoughness / 3.7 + tail;
    const y3 = -2 * Math.log10(y2);
    const fa = 1 / y3 ** 2;
    const fb = fa * (2 - ((3.6 / Math.LN10) * tail) / (y2 * y3));
    const r = reynolds / 2000;
    const x3 = -0.128 + 13 * fa - 2 * fb;
    const x4 = 0.032 - 3 * fa + 0.5 * fb;
    return 7 * fa - fb + r * (0.128 - 17 * fa + 2.5 * fb + r * (x3 + r * x4));
}

export function reynolds(link, network, litersPerHour) {
    const bore = link.bore_mm / 1000;
    return (4 * Math.abs(litersPerHour / 3.6e6)) / (Math.PI * bore * network.viscosity_mm2_s * 1e-6);
}

function pipeLoss(link, network, litersPerHour) {
    if (litersPerHour === 0) return 0;
    const bore = link.bore_mm / 1000;
    const velocity = litersPerHour / 3.6e6 / ((Math.PI / 4) * bore ** 2);
    const f = frictionFactor(reynolds(link, network, litersPerHour), link.roughness_um / link.bore_mm / 1000);
    const k = (f * link.length_m) / bore + link.K;
    return (k * network.density_kg_m3 * velocity * Math.abs(velocity)) / 2000;
}

const square = (loss, at, flow) => loss * (flow / at) * Math.abs(flow / at);

export function pumpRise(link, flow) {
    const speed = link.speed ?? 1;
    const q = flow / speed;
    const p = link.points;
    if (p.length === 3) {
        const exponent = Math.log((p[0][1] - p[2][1]) / (p[0][1] - p[1][1])) / Math.log(p[2][0] / p[1][0]);
        return speed ** 2 * (p[0][1] - (p[0][1] - p[1][1]) * (q / p[1][0]) ** exponent);
    }
    let i = 1;
    while (i < p.length - 1 && p[i][0] < q) i++;
    const slope = (p[i][1] - p[i - 1][1]) / (p[i][0] - p[i - 1][0]);
    return speed ** 2 * (p[i - 1][1] + slope * (q - p[i - 1][0]));
}

/** What is wrong with an answer (empty: nothing), the state of each part that has one, nodes of undetermined pressure. */
export function examine(network, answer) {
    const complaints = [];
    const complain = (where, text) => complaints.push([where, `${where}: ${text}`]);
    const states = {};
    const weight = (network.density_kg_m3 * GRAVITY) / 1000;
    const nodes = Object.fromEntries(network.nodes.map((n) => [n.name, n]));
    const gauge = (name) => answer.pressures[name];
    const total = (name) => gauge(name) + weight * (nodes[name].height_m ?? 0);
    const most = Math.max(1, ...network.nodes.map((n) => Math.abs(gauge(n.name))));
    const mostFlow = Math.max(...Object.values(answer.flows).map(Math.abs));
    const tolerance = 1e-6 * most; // kPa
    const none = 1e-6 * mostFlow; // L/h
    const clear = 0.05; // kPa: the engine's states have a tolerance of 0.0005 ft, about 1 Pa
    const within = (link, difference, what) => {
        if (!(Math.abs(difference) <= tolerance)) complain(link.name, `${what} off by ${difference} kPa`);
    };
    const shut = (link, back, what) => {
        if (!(Math.abs(answer.flows[link.name]) <= none)) complain(link.name, `shut, but it flows`);
        if (!(back >= clear)) complain(link.name, `${what} by only ${back} kPa`);
    };
    const joins = []; // [node, its pressure follows from this other one (or null: from the part itself)]
    const both = (l) => joins.push([l.from, l.to], [l.to, l.from]);

    for (const l of network.links) {
        const q = answer.flows[l.name];
        const still = Math.abs(q) <= none;
        switch (l.type) {
            case "pipe":
                within(l, total(l.from) - total(l.to) - pipeLoss(l, network, q), "loss");
                both(l);
                break;
            case "fitting": {
                const velocity = q / 3.6e6 / ((Math.PI / 4) * (l.bore_mm / 1000) ** 2);
                const loss = (l.K * network.density_kg_m3 * velocity * Math.abs(velocity)) / 2000;
                within(l, total(l.from) - total(l.to) - loss, "loss");
                both(l);
                break;
            }
            case "filter": {
                const loss = (l.linear_kPa * q) / l.flow_L_h + square(l.quadratic_kPa, l.flow_L_h, q);
                within(l, total(l.from) - total(l.to) - loss, "loss");
                both(l);
                break;
            }
            case "check_pipe":
            case "check_valve":
                states[l.name] = answer.closed.has(l.name) ? "shut" : "open";
                if (answer.closed.has(l.name)) {
                    shut(l, total(l.to) - total(l.from), "held shut");
                } else {
                    const pipe = l.type === "check_pipe";
                    const loss = pipe ? pipeLoss(l, network, q) : square(l.loss_kPa, l.flow_L_h, q);
                    within(l, total(l.from) - total(l.to) - loss, "loss");
                    if (still) complain(l.name, "open with hardly a flow");
                    else both(l);
                }
                break;
            case "pump": {
                const rise = total(l.to) - total(l.from);
                states[l.name] = still ? "stalled" : "running";
                if (still) {
                    shut(l, rise - pumpRise(l, 0), "above its shutoff");
                } else {
                    if (q > (l.speed ?? 1) * l.points.at(-1)[0]) complain(l.name, `beyond its curve`);
                    within(l, rise - pumpRise(l, q), "rise");
                    both(l);
                }
                break;
            }
            case "bypass_regulator":
            case "reducing_regulator": {
                const bypass = l.type === "bypass_regulator";
                const [held, side] = bypass ? [l.from, 1] : [l.to, -1];
                const slope = ((l.slope_kPa ?? 0) * q) / (l.slope_flow_L_h ?? 1);
                const excess = side * (gauge(held) - l.set_kPa - l.reference_kPa) - slope;
                const drop = total(l.from) - total(l.to) - square(l.open_loss_kPa, l.open_flow_L_h, q);
                if (answer.closed.has(l.name) || Math.abs(q) <= none) {
                    states[l.name] = "seated";
                    shut(l, Math.max(-excess, total(l.to) - total(l.from)), "seated");
                } else if (Math.abs(excess) < Math.abs(drop)) {
                    states[l.name] = "regulating";
                    within(l, excess, "held pressure");
                    if (drop < clear) complain(l.name, `regulating with only ${drop} kPa to spare`);
                    joins.push([held, null]);
                } else {
                    states[l.name] = "open";
                    within(l, drop, "loss");
                    if (l.slope_kPa) complain(l.name, `open with a slope, which the engine's copy of it does not do`);
                    if (excess < clear) complain(l.name, `fully open by only ${excess} kPa`);
                    both(l);
                }
                break;
            }
            case "orifice": {
                const space = l.space_kPa;
                if (q < 0 && !l.backflow) {
                    shut(l, space - gauge(l.from), "held shut");
                } else if (Math.abs(q) <= none && !l.backflow) {
                    shut(l, space - gauge(l.from), "held shut");
                } else {
                    within(l, gauge(l.from) - space - square(l.loss_kPa, l.flow_L_h, q), "loss");
                    joins.push([l.from, null]);
                }
                if (!l.backflow) states[l.name] = Math.abs(q) <= none ? "shut" : "open";
                break;
            }
            case "capped_orifice": {
                const open = l.flow_L_h * Math.sqrt(Math.max(0, gauge(l.from)) / l.loss_kPa);
                if (open > l.commanded_L_h) {
                    states[l.name] = "commanded";
                    if (!(Math.abs(q - l.commanded_L_h) <= none)) complain(l.name, `not what is commanded`);
                    if (gauge(l.from) - l.loss_kPa < clear) complain(l.name, `hardly commanded`);
                } else {
                    states[l.name] = "held open";
                    within(l, gauge(l.from) - square(l.loss_kPa, l.flow_L_h, q), "loss");
                    if (l.loss_kPa - gauge(l.from) < clear) complain(l.name, `hardly held open`);
                    joins.push([l.from, null]);
                }
                break;
            }
        }
    }

    for (const n of network.nodes.filter((n) => n.pressure_kPa === undefined)) {
        let sum = -(n.draw_L_h ?? 0);
        for (const l of network.links) {
            if (l.to === n.name) sum += answer.flows[l.name];
            if (l.from === n.name) sum -= answer.flows[l.name];
        }
        if (!(Math.abs(sum) <= none)) complain(n.name, `${sum} L/h do not balance`);
    }

    const known = new Set(network.nodes.filter((n) => n.pressure_kPa !== undefined).map((n) => n.name));
    for (let grew = true; grew; ) {
        grew = false;
        for (const [node, other] of joins) {
            if (!known.has(node) && (other === null || known.has(other))) {
                known.add(node);
                grew = true;
            }
        }
    }
    // Between parts that let nothing through the wrong way pressure is whatever it was when they shut, and so is whether
    // such a part counts as shut: the engine's answer rests on its leaks.
    const undetermined = network.nodes.map((n) => n.name).filter((n) => !known.has(n));
    const idle = network.links
        .filter((l) => Math.abs(answer.flows[l.name]) <= none)
        .filter((l) => undetermined.includes(l.from) || undetermined.includes(l.to))
        .map((l) => l.name);
    for (const name of idle) delete states[name];
    const wrong = complaints.filter(([where]) => !idle.includes(where)).map(([, text]) => text);
    return { wrong, states, undetermined };
}
