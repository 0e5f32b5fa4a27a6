// The networks: families of layouts, each drawn several times with numbers from one seeded sequence. All are invented.
// Range: bores 5 to 20 mm, 50 to 800 L/h, 1 to 8 bar, kinematic viscosity 0.3 to 3 mm2/s.

/** A small generator of evenly spread numbers in [0, 1): a counter, mixed. */
function sequence(seed) {
    let state = seed >>> 0;
    return () => {
        state = (state + 0x9e3779b9) >>> 0;
        let z = state;
        z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
        z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
        return ((z ^ (z >>> 15)) >>> 0) / 2 ** 32;
    };
}

class Draft {
    constructor(name, kind, seed) {
        this.next = sequence(seed);
        const viscosity = Number((0.3 * 10 ** this.next()).toFixed(2));
        const fluid = { density_kg_m3: this.number(700, 880, 5), viscosity_mm2_s: viscosity };
        this.network = { name, kind, ...fluid, nodes: [], links: [] };
        this.known = {};
    }

    number(low, high, step) {
        const n = low + Math.round((this.next() * (high - low)) / step) * step;
        return Number(n.toFixed(6));
    }

    pick(...of) {
        return of[Math.floor(this.next() * of.length)];
    }

    fixed(name, pressure_kPa, height_m) {
        this.node({ name, pressure_kPa, ...(height_m ? { height_m } : {}) });
        return name;
    }

    node(node) {
        this.known[node.name] = node;
        this.network.nodes.push(node);
    }

    /** A junction, made when first named. */
    at(name, more = {}) {
        if (!this.known[name]) this.node({ name });
        Object.assign(this.known[name], more);
        return name;
    }

    link(type, from, to, more) {
        const known = { pipe: "H", check_pipe: "C", check_valve: "V", pump: "P", orifice: "J", capped_orifice: "I" };
        const letter = known[type] ?? { fitting: "K", filter: "F" }[type] ?? "R";
        const name = `${letter}${this.network.links.filter((l) => l.name[0] === letter).length + 1}`;
        const ends = to ? { from: this.at(from), to: this.at(to) } : { from: this.at(from) };
        this.network.links.push({ name, type, ...ends, ...more });
        return name;
    }

    passage(more) {
        return {
            length_m: this.number(0.2, 4, 0.05),
            bore_mm: this.number(5, 20, 0.5),
            roughness_um: this.pick(1.5, 1.5, 5, 15, 45),
            K: this.number(0, 4, 0.1),
            ...more,
        };
    }

    pipe(from, to, more) {
        return this.link("pipe", from, to, this.passage(more));
    }

    checkPipe(from, to, more) {
        return this.link("check_pipe", from, to, this.passage(more));
    }

    filter(from, to) {
        const loss = { linear_kPa: this.number(1, 12, 0.5), quadratic_kPa: this.number(1, 12, 0.5) };
        return this.link("filter", from, to, { flow_L_h: 200, ...loss });
    }

    /** An opening into a space; the engine has two ways of its own to do one. */
    orifice(from, flow_L_h, more = {}) {
        const space_kPa = more.space_kPa ?? 0;
        const backflow = more.backflow ?? true;
        const engine = space_kPa === 0 && !more.valve ? "emitter" : "valve";
        return this.link("orifice", from, null, { flow_L_h, loss_kPa: 300, space_kPa, backflow, engine });
    }

    /** A pump that gives about such a flow at such a rise. */
    pump(from, to, flow, rise, more = {}) {
        const shutoff = Math.round(rise * this.number(1.5, 2.2, 0.1));
        const points =
            more.power ?? this.next() < 0.5
                ? [
                      [0, shutoff],
                      [Math.round(flow), Math.round(rise)],
                      [Math.round(flow * 1.5), Math.round(rise * 0.2)],
                  ]
                : [
                      [0, shutoff],
                      [Math.round(flow * 0.4), Math.round(rise + (shutoff - rise) * 0.7)],
                      [Math.round(flow), Math.round(rise)],
                      [Math.round(flow * 1.3), Math.round(rise * 0.6)],
                      [Math.round(flow * 1.7), Math.round(rise * 0.05)],
                  ];
        return this.link("pump", from, to, { points, ...(more.speed ? { speed: more.speed } : {}) });
    }

    regulator(type, from, to, set_kPa, more = {}) {
        const open = { open_loss_kPa: this.number(2, 15, 0.5), open_flow_L_h: 200 };
        return this.link(type, from, to, { set_kPa, reference_kPa: 0, ...open, ...more });
    }
}

const families = {
    series(d, i) {
        d.fixed("S", d.number(100, 800, 10));
        for (let k = 0; k < 3 + i; k++) {
            if (k === 1 && i > 0) d.link("fitting", `n${k}`, `n${k + 1}`, { bore_mm: d.number(5, 20, 0.5), K: 1.5 });
            else d.pipe(k ? `n${k}` : "S", `n${k + 1}`);
        }
        d.orifice(`n${3 + i}`, d.number(100, 400, 10), { valve: i === 1 });
    },

    parallel(d, i) {
        d.fixed("S", d.number(150, 800, 10), i === 2 ? d.number(0.2, 1, 0.1) : 0);
        d.fixed("E", 0);
        d.pipe("S", "a");
        for (let k = 0; k < 2 + i; k++) d.pipe("a", "b");
        d.filter("b", "c");
        d.orifice("c", d.number(50, 300, 10));
        d.pipe("c", "E", { bore_mm: d.number(5, 7, 0.5), K: d.number(20, 200, 5) });
    },

    loops(d, i) {
        const [rows, columns] = [2 + (i % 3), 3 + (i % 2)];
        const node = (r, c) => d.at(`n${r}${c}`);
        d.fixed("S", d.number(200, 800, 10));
        if (i > 1) d.fixed("Z", d.known.S.pressure_kPa - d.number(10, 60, 10), d.number(0, 1, 0.1));
        for (let r = 0; r < rows; r++) {
            for (let c = 0; c < columns; c++) {
                if (c + 1 < columns) d.pipe(node(r, c), node(r, c + 1));
                if (r + 1 < rows) d.pipe(node(r, c), node(r + 1, c));
                if (i > 2) d.at(node(r, c), { height_m: d.number(-0.5, 0.5, 0.05) });
            }
        }
        d.pipe("S", node(0, 0), { bore_mm: d.number(8, 20, 0.5) });
        if (i > 1) d.pipe("Z", node(rows - 1, columns - 1), { bore_mm: d.number(5, 8, 0.5) });
        for (const [r, c] of [[0, columns - 1], [rows - 1, 0]]) d.at(node(r, c), { draw_L_h: d.number(20, 160, 5) });
        d.orifice(node(1, 1), d.number(60, 200, 5));
        if (i > 3) d.orifice(node(0, 1), d.number(60, 200, 5));
    },

    // Tank, pump, filter, a Y into two rails that join again, return regulator, return.
    rails(d, i) {
        const what = ["regulating", "seated", "open"][i % 3];
        const boost = i < 3 ? 0 : d.pick(-40, 60, 120);
        const set = d.number(250, 400, 10);
        const flow = what === "seated" ? 70 : d.number(250, 500, 10);
        d.fixed("T", 0);
        d.pump("T", "p", flow, set + boost + 80);
        const valve = i % 2 ? "check_valve" : "fitting";
        const loss = valve === "fitting" ? { bore_mm: 8, K: 1.2 } : { flow_L_h: 200, loss_kPa: 6 };
        d.link(valve, "p", "q", loss);
        d.filter("q", "f");
        d.pipe("f", "y", { bore_mm: d.number(7, 10, 0.5), length_m: 3 });
        const cylinders = what === "seated" ? 4 : 2 + (i % 3);
        for (const rail of ["a", "b"]) {
            d.pipe("y", `${rail}1`, { bore_mm: d.number(7, 12, 0.5), length_m: d.number(0.3, 0.8, 0.05) });
            for (let k = 1; k <= cylinders; k++) {
                if (k > 1) d.pipe(`${rail}${k - 1}`, `${rail}${k}`, { bore_mm: 12, length_m: 0.1, K: 0.2 });
                d.orifice(`${rail}${k}`, d.number(10, 25, 1), { space_kPa: boost });
            }
            d.pipe(`${rail}${cylinders}`, "j", { bore_mm: 8, length_m: d.number(0.2, 0.6, 0.05) });
        }
        const slope = i > 5 && what !== "open" ? { slope_kPa: d.number(3, 25, 1), slope_flow_L_h: 200 } : {};
        d.regulator("bypass_regulator", "j", "r", set, { reference_kPa: boost, ...slope });
        const thin = what === "open" ? { bore_mm: 5, length_m: 4, K: 400 } : { bore_mm: d.number(7, 10, 0.5) };
        d.pipe("r", "T", thin);
    },

    deadEnd(d, i) {
        d.fixed("S", d.number(200, 600, 10));
        d.pipe("S", "a");
        d.pipe("a", "b");
        d.orifice("b", d.number(80, 300, 10));
        d.pipe("a", "blind1");
        d.pipe("blind1", "blind2");
        if (i > 0) d.pipe("a", "blind2");
        if (i > 1) {
            d.fixed("Z", d.number(0, 60, 10));
            d.checkPipe("Z", "a");
        }
    },

    // A pump that a shut check valve holds at its shutoff.
    shutoff(d, i) {
        d.fixed("T", 0);
        d.fixed("S", d.number(500, 700, 10));
        d.pump("T", "p", d.number(100, 200, 10), 200, { power: i === 0 });
        d.pipe("p", "q");
        d.checkPipe("q", "a");
        d.pipe("S", "a", { bore_mm: 8 });
        d.orifice("a", d.number(100, 300, 10));
    },

    tanks(d, i) {
        const tanks = 3 + (i % 3);
        const about = d.number(100, 700, 10);
        for (let k = 0; k < tanks; k++) {
            d.fixed(`S${k}`, about + d.number(0, 70, 5), i % 2 ? d.number(-1, 1, 0.1) : 0);
            d.pipe(`S${k}`, `n${k}`, { bore_mm: d.number(5, 9, 0.5) });
            if (k) d.pipe(`n${k - 1}`, `n${k}`);
        }
        if (i > 1) d.pipe(`n${tanks - 1}`, "n0");
        d.at("n1", { draw_L_h: d.number(-100, 150, 10) });
        if (i > 2) d.orifice("n2", d.number(50, 200, 10), { space_kPa: d.number(-50, 100, 10) });
    },

    checks(d, i) {
        const [high, low] = [d.number(400, 800, 10), d.number(100, 300, 10)];
        d.fixed("S", i % 2 ? low : high);
        d.fixed("Z", i % 2 ? high : low);
        d.checkPipe("S", "a");
        d.checkPipe("Z", "b");
        d.checkPipe("a", "b", { bore_mm: 8 });
        if (i > 1) d.checkPipe("b", "a", { bore_mm: 6 });
        d.orifice("a", d.number(100, 300, 10), { space_kPa: d.number(-50, 50, 10), backflow: i < 3 });
        d.orifice("b", d.number(100, 300, 10), { valve: true, space_kPa: i === 3 ? 900 : 0, backflow: false });
    },

    // A bank in parallel (one too weak to open its check valve), a chain, other speeds.
    pumps(d, i) {
        d.fixed("T", d.pick(0, 0, 20), i > 3 ? -0.5 : 0);
        const flow = d.number(120, 260, 10);
        if (i % 3 === 2) {
            d.pump("T", "p1", flow * 2, 60, { power: i < 3 });
            d.pipe("p1", "p2", { bore_mm: 10 });
            d.pump("p2", "p", flow * 1.8, 200, { speed: d.pick(0.9, 1.1) });
        } else {
            d.pump("T", "p", flow, 350, { power: i < 3 });
            const weak = i % 3 === 1;
            d.pump("T", "p1", flow, weak ? 50 : 320, { power: i > 2, speed: weak ? 0.8 : undefined });
            d.pipe("p1", "p", { bore_mm: 8 });
        }
        d.filter("p", "f");
        d.pipe("f", "n", { bore_mm: 8 });
        d.orifice("n", d.number(150, 250, 10));
        d.pipe("n", "T", { bore_mm: 6, length_m: 2, K: 60 });
    },

    reducing(d, i) {
        const what = ["regulating", "seated", "open"][i % 3];
        const set = d.number(200, 350, 10);
        d.fixed("S", what === "open" ? set - 40 : d.number(450, 800, 10));
        d.pipe("S", "u", { bore_mm: d.number(7, 12, 0.5) });
        const slope = i > 2 && what !== "open" ? { slope_kPa: d.number(3, 25, 1), slope_flow_L_h: 200 } : {};
        d.regulator("reducing_regulator", "u", "r", set, { reference_kPa: d.pick(0, 30, -30), ...slope });
        for (let k = 1; k <= 4; k++) {
            d.pipe(k > 1 ? `n${k - 1}` : "r", `n${k}`, { bore_mm: 10, length_m: 0.2 });
            d.orifice(`n${k}`, d.number(20, 60, 5));
        }
        if (what === "seated") {
            d.fixed("Z", 500);
            d.pipe("Z", "n4", { bore_mm: 10, length_m: 1 });
        }
        if (what !== "seated" && i > 2) d.pipe("u", "spare");
    },

    // A reducing regulator feeds a rail, a bypass regulator ends it.
    both(d, i) {
        const set = d.number(300, 380, 10);
        d.fixed("S", d.number(500, 800, 10));
        d.fixed("T", 0);
        d.pipe("S", "u", { bore_mm: 8 });
        d.regulator("reducing_regulator", "u", "r", set, { slope_kPa: 5 * i, slope_flow_L_h: 200 });
        d.pipe("r", "m", { bore_mm: d.number(6, 8, 0.5) });
        d.pipe("r", "m", { bore_mm: d.number(5, 7, 0.5), length_m: 2 });
        d.orifice("m", d.number(60, 150, 10));
        d.pipe("m", "j", { bore_mm: d.number(6, 7, 0.5), length_m: 2 });
        d.regulator("bypass_regulator", "j", "e", set - d.number(20, 60, 5));
        d.pipe("e", "T", { bore_mm: 9 });
    },

    // Injectors that hold a commanded mean flow as long as the pressure suffices.
    commanded(d, i) {
        const needed = d.number(150, 300, 10);
        d.fixed("S", needed + [120, 15, 14, 22, 40][i]);
        d.pipe("S", "n0", { bore_mm: d.number(6, 9, 0.5), length_m: [1, 3, 2, 1, 1][i] });
        for (let k = 0; k < 4 + i; k++) {
            if (k) d.pipe(`n${k - 1}`, `n${k}`, { bore_mm: 5.5, length_m: 0.3 });
            const flow = d.number(25, 60, 1);
            const commanded = { flow_L_h: flow, loss_kPa: needed, commanded_L_h: flow };
            d.link("capped_orifice", `n${k}`, null, commanded);
        }
    },

    // Little pressure and thick fluid: laminar, and between laminar and turbulent.
    slow(d, i) {
        d.network.viscosity_mm2_s = [3, 2, 1.2, 0.6, 2.5, 0.9][i];
        d.fixed("S", d.number(100, 140, 1));
        d.fixed("Z", 100, i > 2 ? 0.1 : 0);
        d.pipe("S", "a", { bore_mm: d.number(9, 16, 0.5) });
        d.pipe("a", "b", { bore_mm: d.number(12, 20, 0.5) });
        d.pipe("a", "b", { bore_mm: d.number(6, 10, 0.5) });
        d.pipe("b", "c", { bore_mm: d.number(12, 20, 0.5) });
        d.pipe("a", "c", { bore_mm: d.number(5, 8, 0.5) });
        d.pipe("c", "Z", { bore_mm: d.number(6, 9, 0.5), length_m: 3 });
        d.at("b", { draw_L_h: d.number(5, 40, 1) });
    },

    // A tree with chords, of mixed parts.
    mixed(d, i) {
        const size = 6 + 2 * i;
        const tanks = 1 + (i % 3);
        const about = d.number(150, 700, 10);
        for (let k = 0; k < tanks; k++) d.fixed(`S${k}`, about + d.number(0, 50, 5), d.number(-0.5, 0.5, 0.1));
        const join = (a, b) => {
            const dice = d.next();
            if (dice < 0.07) d.filter(a, b);
            else if (dice < 0.14) d.link("fitting", a, b, { bore_mm: d.number(5, 20, 0.5), K: d.number(1, 20, 0.5) });
            else if (dice < 0.22) d.checkPipe(a, b);
            else if (dice < 0.27) d.link("check_valve", a, b, { flow_L_h: 200, loss_kPa: d.number(2, 20, 1) });
            else if (dice < 0.6) d.pipe(a, b, { bore_mm: d.number(5, 10, 0.5) });
            else d.pipe(b, a, { bore_mm: d.number(5, 10, 0.5) });
        };
        for (let k = 0; k < size; k++) {
            const height_m = d.number(-0.5, 0.5, 0.05);
            const parent = k < tanks ? `S${k}` : `n${Math.floor(d.next() * k)}`;
            d.at(`n${k}`, { height_m });
            join(parent, `n${k}`);
        }
        for (let k = 0; k < size / 2; k++) {
            const [a, b] = [d.number(0, size - 1, 1), d.number(0, size - 1, 1)];
            if (a !== b) join(`n${Math.min(a, b)}`, `n${Math.max(a, b)}`);
        }
        for (let k = 1; k < size; k += 3) d.orifice(`n${k}`, d.number(20, 120, 5), { valve: d.next() < 0.3 });
        for (let k = 2; k < size; k += 5) d.at(`n${k}`, { draw_L_h: d.number(5, 40, 5) });
    },
};

const counts = {
    series: 3,
    parallel: 4,
    loops: 6,
    rails: 12,
    deadEnd: 3,
    shutoff: 2,
    tanks: 5,
    checks: 4,
    pumps: 6,
    reducing: 6,
    both: 3,
    commanded: 5,
    slow: 6,
    mixed: 18,
};

/** All networks, in a fixed order, each from its own seed. */
export function networks() {
    const all = [];
    for (const [family, count] of Object.entries(counts)) {
        for (let i = 0; i < count; i++) {
            const draft = new Draft(`${family}-${i + 1}`, family, 1000 * (Object.keys(counts).indexOf(family) + 1) + i);
            families[family](draft, i);
            all.push(draft.network);
        }
    }
    return all;
}
