import type { WorkshopWords } from "./shape";

export const en: WorkshopWords = {
  language: "en",
  lessons: [
    {
      id: "cans",
      page: "Catch cans",
      title: "What did the ground get?",
      question:
        "Sixteen cans stood on a grid between four sprinklers for a whole set. Did every can catch the same?",
      guess: "The driest quarter of the cans over the average (1 would be even)",
      hand: "Order the cans from dry to wet. Average the driest quarter, and divide by the average of all.",
      field:
        "Walk to the driest can and look up: a plugged nozzle, a leaning riser, a spacing too wide for the wind. Mend that first; longer sets only waste water where it is wet already.",
      source:
        "ASAE S436.1 for the can test and Christiansen (1942) for his uniformity, from memory; four cans of sixteen are the driest quarter by definition.",
      trainer: {
        minutes: 40,
        ask: "Who has measured what the ground gets, and not only what the pump gives?",
        say: "“It looks even from the road.” Let them find the driest can by eye first, then by measuring.",
        answer: "The driest quarter gets 0.71 of the average; Christiansen's uniformity is 0.82.",
      },
      handout: "The driest quarter over the average is called the [distribution uniformity].",
    },
    {
      id: "rate",
      page: "Rate and soil",
      title: "How fast does it rain, and can the soil take it?",
      question:
        "The soil is a bucket with a narrow neck: it holds so much, and takes it in only so fast. How fast do the sprinklers pour?",
      guess: "The rate at which the sprinklers pour",
      hand: {
        US: "96.25 times the flow of a sprinkler in gpm, over spacing times move in ft, gives in/h.",
        SI: "1000 times the flow of a sprinkler in m³/h, over spacing times move in m, gives mm/h.",
      },
      field:
        "Water that stands between the sprinklers or runs off says that the rate is too high for this soil on this slope: smaller nozzles, or a wider move where the wind allows it, not shorter hours alone.",
      source:
        "A flow over an area is a rate: arithmetic. What soils hold and take in: USDA-NRCS, National Engineering Handbook, Part 652, from memory.",
      trainer: {
        minutes: 25,
        ask: "What is the fastest rain your soil takes before water stands?",
        say: "“As fast as the pump can.” Pour a cup slowly and then at once on a tray of soil.",
        answer:
          "About 0.18 in/h (4.4 mm/h) on the demo field; the silt loam takes more on its gentle slope.",
      },
      handout:
        "The rate is the flow of one sprinkler over the [area of one sprinkler: spacing times move].",
    },
    {
      id: "hours",
      page: "Hours and moves",
      title: "How many hours, and when do I move?",
      question:
        "The soil needs its net depth back. How long must the line stand, and how many times can it move in a day?",
      guess: "Hours of a set",
      hand: "Net depth over rate, over efficiency. Then a working day over hours of a set plus hours of a move, rounded down.",
      field:
        "Use the hours with the efficiency in them: they give enough to about four fifths of the field. The average alone leaves half the field short. The hours for the driest quarter are longer still: for a crop that pays for it.",
      source:
        "Depth over rate: arithmetic. Which part of the field must get enough is a choice; planning for about four fifths of it is common practice, no source.",
      trainer: {
        minutes: 25,
        ask: "How do you know when a set is long enough?",
        say: "“From supper to breakfast.” Work out what depth that gives, then ask what the roots can hold.",
        answer:
          "Depth over rate over efficiency. A set that does not fit the day wants a longer day, or a smaller depth more often; another line does not shorten it.",
      },
      handout: "Hours of a set = net depth over [rate], over [efficiency].",
    },
    {
      id: "wind",
      page: "Spacing and wind",
      title: "How far apart, when the wind blows?",
      question:
        "A sprinkler wets a circle; wind pushes it thin on one side. How far may the line move?",
      guess: "The widest move at this wind",
      hand: "Wetted diameter times a share: 0.65 in calm air, 0.60 up to 5 mph (8 km/h), 0.50 up to 10 mph (16 km/h), 0.45 above. Along the line 0.50 at any wind.",
      field:
        "Water at night or early when the wind sleeps. If the afternoon wind is twice that of the plan, move less far or wait.",
      source:
        "USDA-NRCS conservation practice standard, Sprinkler System, Code 442: largest spacings by wind, from memory.",
      trainer: {
        minutes: 20,
        ask: "When is it calmest where you are?",
        say: "“The wind evens itself out.” It does not, where it blows from one side all season.",
        answer:
          "0.60 of the wetted diameter at the wind of the demo field. The move stays within it.",
      },
      handout: "In stronger wind the move must be [smaller].",
    },
    {
      id: "pressure",
      page: "Pressure",
      title: "What does a pipe take from the pressure?",
      question: "Water rubs along the wall. How much pressure is gone at the end of one pipe?",
      guess: "Pressure lost in the pipe below",
      hand: {
        US: "1050 times (gpm over C) to the power 1.852, times inches of bore to the power -4.87: feet in 100 feet. 2.31 ft make 1 psi.",
        SI: "1.217 × 10¹² times (L/s over C) to the power 1.852, times mm of bore to the power -4.87: meters in 100 meters. 1 m makes 9.79 kPa.",
      },
      field:
        "Read a gauge at each end of the feeder, and take off what the ground rises between them (2.31 ft are 1 psi, 1 m is 9.79 kPa): the rest is what the pipe took. Much more than planned: too much flow, a crushed or dirty pipe, or a smaller bore than you think.",
      source:
        "Hazen–Williams as the handbook prints it: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11, Sprinkler Irrigation; in L/s and mm it is the same equation converted.",
      trainer: {
        minutes: 25,
        ask: "With twice the flow, is it twice the loss?",
        say: "“Twice.” It is 3.6 times. Let them find it by doubling the flow.",
        answer: "Two to the power 1.852 is 3.61.",
      },
      handout: "Twice the flow in one pipe loses [3.6] times the pressure.",
    },
    {
      id: "along",
      page: "Along the line",
      title: "Why is the loss along a line so much less?",
      question:
        "Every sprinkler takes its share, so the tubing carries less and less. What part of the full loss is left?",
      guess: "Loss of a line of eight sprinklers over that of the full flow all the way (0 to 1)",
      hand: "Add up the segments. Or take the factor: 1/2.852 + 1/(2 N) + 0.923/(6 N²), N outlets.",
      field:
        "Near the inlet the tubing works hardest: that is where a larger size pays. The factor takes all sprinklers as equal; on a long line they are not, and only the solved line tells.",
      source:
        "Christiansen's multiple-outlet factor (1942), as in USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11; the exact sum is arithmetic.",
      trainer: {
        minutes: 20,
        ask: "What flows in the last segment?",
        say: "“The same as everywhere.” Count it: one sprinkler's flow.",
        answer: "About 0.42 for eight; it goes toward 0.35 for very many.",
      },
      handout: "The last segment of a line carries the flow of [one] sprinkler.",
    },
    {
      id: "band",
      page: "Band of pressure",
      title: "How far may the pressure vary?",
      question:
        "The practice standard lets pressure vary by a fifth of the average. How many sprinklers keep within it, uphill, level and downhill?",
      guess: "The most sprinklers on one line of the larger tubing",
      hand: "Highest less lowest, over the average. A sprinkler's flow goes with the square root of its pressure: a fifth of pressure is a tenth of flow.",
      field:
        "Lay the line along the contour or a little downhill: the fall gives back what friction takes. Uphill, both take.",
      source:
        "USDA-NRCS conservation practice standard, Sprinkler System, Code 442: the limit of a fifth, from memory. The square root is that of any nozzle.",
      trainer: {
        minutes: 25,
        ask: "Which sprinkler has the least pressure on a line that runs downhill?",
        say: "“The last.” Often it is one in the middle: friction is spent early, the fall comes all along.",
        answer: "Look at the picture: the lowest point of each line.",
      },
      handout: "Pressure may vary by one [fifth]; the flow then varies by one [tenth].",
    },
    {
      id: "bore",
      page: "Tubing",
      title: "Which size goes into the formula?",
      question:
        "The tubing says 50. That is its outside, in millimeters. What is left inside for the water?",
      guess: "Bore of 50 mm tubing, SDR 17",
      hand: "The wall is the outside over the SDR, rounded up: 3.0 mm, the least that the standard allows. In the middle of their tolerances the wall is 3.2 mm and the outside 50.2 mm; the bore is that outside less two such walls, as the function takes it.",
      field:
        "Read the whole print on the tubing: size, series, SDR. Cut a scrap and measure the bore before you trust a plan.",
      source:
        "ISO 4427-2 and ASTM F714, D2239 for the dimensions of polyethylene pipe, from memory.",
      trainer: {
        minutes: 15,
        ask: "What does 50 on this tubing measure?",
        say: "“Inside.” Pass a piece round with a caliper.",
        answer:
          "43.8 mm of bore (1.72 in). With 50 in the formula nearly half of the loss would be hidden.",
      },
      handout: "The size printed on metric tubing is its [outside diameter].",
    },
    {
      id: "sizes",
      page: "Two sizes",
      title: "Where may the tubing become smaller?",
      question:
        "Half way out only half of the water is left. After how many segments is the smaller, cheaper tubing enough?",
      guess: "Segments of the larger tubing",
      hand: "Take the flow that is left after the segment, and the loss in the smaller bore; add it up outward and compare with the limit.",
      field:
        "Buy the larger size for the inlet end and mark the coupling: laid the wrong way round the far sprinklers starve.",
      source:
        "The solved line against the practice standard's limit; two sizes on a line are common practice, no source.",
      trainer: {
        minutes: 20,
        ask: "Where on the line does a dollar of larger tubing help most?",
        say: "“At the far end, where the pressure is low.” Look at which segments lose it.",
        answer: "At the inlet: the first half loses most of the pressure.",
      },
      handout: "The larger tubing belongs at the [inlet] end of the line.",
    },
    {
      id: "pump",
      page: "Feeder and pump",
      title: "What must the pump give?",
      question:
        "From the far sprinkler back to the pond: line, feeder, main, filter, lift. What does it add up to?",
      guess: "Total dynamic head",
      hand: {
        US: "All pressures in psi times 2.31, plus the lift in ft, is the head in ft. Power in hp: gpm times ft over 3960, over the pump's efficiency.",
        SI: "All pressures in kPa over 9.79, plus the lift in m, is the head in m. Power in kW: m³/h times m over 367, over the pump's efficiency.",
      },
      field:
        "A pump gives what its curve says at the flow that it is asked for. Fewer lines running means more pressure: throttle at the hydrant.",
      source:
        "Bernoulli's equation; the constants are those of the units. The pump's curve is its manufacturer's.",
      trainer: {
        minutes: 20,
        ask: "One line is shut. Does the pressure in the other rise or fall?",
        say: "“It stays.” Follow the curve to the left.",
        answer: "It rises: less flow, more head, less lost on the way.",
      },
      handout: "When fewer lines run, the pressure in the others [rises].",
    },
    {
      id: "end",
      page: "Season end",
      title: "What is left in the tubing when we stop?",
      question: "Before the frost and before towing the line must be empty. How much is in it?",
      guess: "Water in the whole line",
      hand: {
        US: "0.0408 times the bore in inches squared gives gallons in a foot.",
        SI: "0.0007854 times the bore in mm squared gives liters in a meter.",
      },
      field:
        "Open the lowest end first, let air in at the highest, and give it time. Water left in the dips weighs on the tow and cracks fittings in frost.",
      source: "The volume of a cylinder: geometry.",
      trainer: {
        minutes: 15,
        ask: "How heavy is the line before it is drained?",
        say: "“It is only plastic.” Work out the water: 8.3 lb to a gallon, 1 kg to a liter.",
        answer: "About three times what the tubing itself weighs.",
      },
      handout: "Before the caps come off, the line must be without [pressure].",
    },
  ],
  exercises: {
    catchDepth: {
      ask: {
        US: "A can with an opening of {opening} in caught {volume} mL. What depth is that?",
        SI: "A can with an opening of {opening} mm caught {volume} mL. What depth is that?",
      },
      hint: "Volume over the area of the opening.",
      second: {
        US: "1 mL is 0.0610 cubic inches; the opening has 12.57 square inches.",
        SI: "1 mL is 1000 cubic millimeters; the opening has 7854 square millimeters.",
      },
      shown: {
        US: "{volume} × 0.0610 ÷ 12.57",
        SI: "{volume} × 1000 ÷ 7854",
      },
    },
    uniformity: {
      ask: "The cans caught {a}, {b}, {c}, {d}, {e}, {f}, {g} and {h}. What is Christiansen's uniformity, as a fraction?",
      hint: "The average is 10. How far is each from it?",
      second: "The distances add up to 12, the catches to 80.",
      shown: "1 − 12 ÷ 80",
    },
    driestQuarter: {
      ask: "The same cans: {a}, {b}, {c}, {d}, {e}, {f}, {g} and {h}. What is the driest quarter over the average, as a fraction?",
      hint: "A quarter of eight cans is two cans: the driest two.",
      second: "They caught 7 and 8; the average of all is 10.",
      shown: "(7 + 8) ÷ 2 ÷ 10",
    },
    rate: {
      ask: {
        US: "A sprinkler gives {flow} gpm on {spacing} by {move} ft. What is the rate?",
        SI: "A sprinkler gives {flow} m³/h on {spacing} by {move} m. What is the rate?",
      },
      hint: "The flow of one sprinkler over the area of one sprinkler.",
      second: {
        US: "96.25 times the flow, over {spacing} times {move}.",
        SI: "1000 times the flow, over {spacing} times {move}.",
      },
      shown: {
        US: "96.25 × {flow} ÷ ({spacing} × {move})",
        SI: "1000 × {flow} ÷ ({spacing} × {move})",
      },
    },
    netDepth: {
      ask: {
        US: "The soil holds {holds} in in each foot, roots reach {root} ft, and the crop may use {share} of it. How much may be put back at once?",
        SI: "The soil holds {holds} mm in each meter, roots reach {root} m, and the crop may use {share} of it. How much may be put back at once?",
      },
      hint: "First what the root zone holds in all.",
      second: "{holds} times {root}, and of that the share {share}.",
      shown: "{holds} × {root} × {share}",
    },
    hours: {
      ask: {
        US: "How many hours does a net depth of {depth} in take at {rate} in/h and an efficiency of {efficiency}?",
        SI: "How many hours does a net depth of {depth} mm take at {rate} mm/h and an efficiency of {efficiency}?",
      },
      hint: "Depth over rate; then more, for what does not reach the roots.",
      second: "Divide by the efficiency too: it is below 1, so the hours become more.",
      shown: "{depth} ÷ {rate} ÷ {efficiency}",
    },
    setsADay: {
      ask: "A set takes {hours} hours, a move {move} hours, the day has {day}. How many whole sets a day?",
      hint: "Each set brings its move with it.",
      second: "{day} over the sum of {hours} and {move}, rounded down.",
      shown: "{day} ÷ ({hours} + {move}), rounded down",
    },
    widestMove: {
      ask: {
        US: "A sprinkler wets {wetted} ft across; the wind is {wind} mph. What is the widest move?",
        SI: "A sprinkler wets {wetted} m across; the wind is {wind} km/h. What is the widest move?",
      },
      hint: "A share of the wetted diameter: look it up by the wind.",
      second: "Up to 5 mph (8 km/h) the share is {share}.",
      shown: "{share} × {wetted}",
    },
    friction: {
      ask: {
        US: "How much pressure do {flow} gpm lose in {length} ft of pipe with a bore of {bore} in, C {c}?",
        SI: "How much pressure do {flow} m³/h lose in {length} m of pipe with a bore of {bore} mm, C {c}?",
      },
      hint: "Hazen–Williams: the loss in a hundred lengths first.",
      second: {
        US: "5.32 ft in each 100 ft; 2.31 ft make 1 psi.",
        SI: "4.94 m in each 100 m; 1 m makes 9.79 kPa.",
      },
      shown: {
        US: "1050 × ({flow} ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 ÷ 2.31",
        SI: "1.217e12 × ({flow} ÷ 3.6 ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 × 9.79",
      },
    },
    headFlow: {
      ask: {
        US: "A nozzle has K {k} (gpm and psi). What does it give at {pressure} psi?",
        SI: "A nozzle has K {k} (m³/h and kPa). What does it give at {pressure} kPa?",
      },
      hint: "Flow goes with the square root of the pressure.",
      second: "The root is {root}; times K.",
      shown: "{k} × √{pressure} = {k} × {root}",
    },
    factor: {
      ask: "What is the multiple-outlet factor F for {outlets} outlets?",
      hint: "Between the factors for 12 and for 16 outlets: a little under 0.40.",
      second: "1/2.852 + 1/28 + 0.923/1176.",
      shown: "0.3506 + 0.0357 + 0.0008",
    },
    shortcut: {
      ask: {
        US: "{outlets} sprinklers take {flow} gpm from {length} ft of tubing with a bore of {bore} in, C {c}. What does the shortcut with F say is lost?",
        SI: "{outlets} sprinklers take {flow} m³/h from {length} m of tubing with a bore of {bore} mm, C {c}. What does the shortcut with F say is lost?",
      },
      hint: "The loss of the full flow through the full length, times F.",
      second: {
        US: "The full flow would lose about 12.4 psi; F is 0.387.",
        SI: "The full flow would lose about 85 kPa; F is 0.387.",
      },
      shown: {
        US: "1050 × ({flow} ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 ÷ 2.31 × 0.387",
        SI: "1.217e12 × ({flow} ÷ 3.6 ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 × 9.79 × 0.387",
      },
    },
    mostHeads: {
      ask: {
        US: "A level line begins with {inlet} psi; sprinklers with K {k} stand every {spacing} ft; the bore is {bore} in, C {c}. How many keep within {limit}?",
        SI: "A level line begins with {inlet} kPa; sprinklers with K {k} stand every {spacing} m; the bore is {bore} mm, C {c}. How many keep within {limit}?",
      },
      hint: "Let the function search: LATERAL.MAXHEADS, the limit first.",
      second: "More than 14 and fewer than 21.",
      shown: "the function tries line after line; it can only be solved",
    },
    bore: {
      ask: {
        US: "Metric tubing, {size} mm, SDR {sdr}. What is its bore, in inches?",
        SI: "Metric tubing, {size} mm, SDR {sdr}. What is its bore?",
      },
      hint: "Outside less two walls, each in the middle of its tolerance: 50.0 to 50.4 mm, 3.0 to 3.4 mm.",
      second: {
        US: "The outside is 50.2 mm, a wall 3.2 mm; 25.4 mm make an inch.",
        SI: "The outside is 50.2 mm, a wall 3.2 mm.",
      },
      shown: { US: "(50.2 − 2 × 3.2) ÷ 25.4", SI: "50.2 − 2 × 3.2" },
    },
    segment: {
      ask: {
        US: "A line of {heads} sprinklers, {head} gpm each. How much pressure does segment {segment} lose in {length} ft of tubing with a bore of {bore} in, C {c}?",
        SI: "A line of {heads} sprinklers, {head} m³/h each. How much pressure does segment {segment} lose in {length} m of tubing with a bore of {bore} mm, C {c}?",
      },
      hint: "First: how many sprinklers does that segment still feed?",
      second: "{left} sprinklers: a flow of {flow}.",
      shown: {
        US: "1050 × ({flow} ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 ÷ 2.31",
        SI: "1.217e12 × ({flow} ÷ 3.6 ÷ {c})^1.852 × {bore}^-4.87 × {length} ÷ 100 × 9.79",
      },
    },
    pumpHead: {
      ask: {
        US: "The hydrant needs {pressure} psi, main and filter lose {losses} psi, the water is lifted {lift} ft. What is the total dynamic head?",
        SI: "The hydrant needs {pressure} kPa, main and filter lose {losses} kPa, the water is lifted {lift} m. What is the total dynamic head?",
      },
      hint: "Add the pressures and turn them into head; then the lift.",
      second: {
        US: "{sum} psi; 1 psi is 2.31 ft of water.",
        SI: "{sum} kPa; 9.79 kPa is 1 m of water.",
      },
      shown: { US: "{sum} × 2.31 + {lift}", SI: "{sum} ÷ 9.79 + {lift}" },
    },
    power: {
      ask: {
        US: "A pump gives {flow} gpm at {head} ft with an efficiency of {efficiency}. What power does its shaft take?",
        SI: "A pump gives {flow} m³/h at {head} m with an efficiency of {efficiency}. What power does its shaft take?",
      },
      hint: "Flow times head is the water's power; the shaft takes more.",
      second: {
        US: "{flow} times {head} over 3960, over the efficiency.",
        SI: "{flow} times {head} over 367, over the efficiency.",
      },
      shown: {
        US: "{flow} × {head} ÷ 3960 ÷ {efficiency}",
        SI: "{flow} × {head} ÷ 367 ÷ {efficiency}",
      },
    },
    water: {
      ask: {
        US: "How much water stands in {length} ft of tubing with a bore of {bore} in?",
        SI: "How much water stands in {length} m of tubing with a bore of {bore} mm?",
      },
      hint: "The area of the bore times the length.",
      second: {
        US: "0.0408 times the bore squared is gallons in a foot.",
        SI: "0.0007854 times the bore squared is liters in a meter.",
      },
      shown: { US: "0.0408 × {bore}² × {length}", SI: "0.0007854 × {bore}² × {length}" },
    },
  },
  pictures: {
    cansTitle: "Depth in the cans between four sprinklers",
    sprinkler: "Sprinkler",
    canCaught: "The can in row 3, column 3 caught",
    mean: "Average depth",
    du: "Driest quarter over average (DU)",
    cu: "Christiansen's uniformity (CU)",
    cansSaid: "The driest quarter (▽) gets {du} of the average.",
    bucketTitle: "The soil as a bucket with a narrow neck",
    headFlow: "Flow of a sprinkler",
    spacing: "Sprinkler spacing",
    move: "Move",
    slope: "Slope",
    pours: "Sprinklers pour",
    takes: "The soil takes",
    runsOff: "runs off",
    soilGood: "The soil takes all of it.",
    soilBad: "More than the soil takes: water stands or runs off.",
    fieldTitle: "The field with its positions, and the day of each",
    netDepth: "Net depth",
    efficiency: "Efficiency",
    lines: "Lines",
    line: "Line",
    dayBelow: "Above: position. Below: its day.",
    setHours: "Hours of a set",
    setsADay: "Sets a day with one line",
    roundDays: "Days to cover the field",
    hoursSaid: "Run {hours} hours, then move; the field is covered in {days} days.",
    tooLong:
      "A set does not fit the working day: more lines do not help, a smaller depth or a longer day does.",
    overlap: "Between them, in still air (▽ driest): CU",
    windTitle: "Two positions of a line and what they wet",
    wetted: "Wetted diameter",
    wind: "Wind",
    widestMove: "Widest move",
    windGood: "The move is within what this wind allows.",
    windBad: "Too wide for this wind: a dry strip between the positions.",
    pressureTitle: "Pressure lost against flow",
    pipeFlow: "Flow",
    bore: "Bore",
    lost: "Lost",
    twice: "With twice the flow, the loss becomes",
    speed: "Velocity",
    pressureSaid: "This pipe takes {lost}.",
    alongTitle: "What each segment of the line carries",
    heads: "Sprinklers on the line",
    factor: "Multiple-outlet factor F",
    alongBelow: "Sprinklers that each segment still feeds",
    equalLoss: "Loss by F, sprinklers taken as equal",
    solvedLoss: "Loss of the solved line",
    alongLong:
      "On so long a line the far sprinklers get less pressure and give less water. F cannot know that: solve the line.",
    alongSaid: "The whole flow passes only the first segment: F of the full loss is left.",
    bandTitle: "Pressure along the line, uphill, level and downhill",
    uphill: "Uphill",
    level: "Level",
    downhill: "Downhill",
    band: "a fifth of the average",
    bandUphill: "the limit, uphill",
    bandGood: "Even uphill this line keeps within the limit.",
    bandBad: "Uphill this line varies too much.",
    boreTitle: "Loss against bore",
    size: "Size near",
    sizeShown: "Tubing shown",
    hidden: "With the outside in the formula",
    boreSaid: "The bore is {bore}.",
    sizesTitle: "Pressure along the line in one size and in two",
    larger: "Segments in the larger tubing",
    allLarger: "All larger",
    twoSizes: "Two sizes",
    sizesGood: "With this change of size the line keeps within the limit.",
    sizesBad: "Too early: the line varies too much.",
    pumpTitle: "The pump's curve",
    linesRunning: "Lines running",
    head: "Head",
    pumpSaid: "Fewer lines: less flow, more head.",
    endTitle: "The ground under the line",
    length: "Length of the line",
    ground: "Height",
    water: "Water in the line",
    weight: "It weighs",
    endSaid: "All in the larger tubing it holds {water}. The dips keep theirs unless air gets in.",
  },
  page: {
    lessons: "Lessons",
    trainer: "For the trainer",
    handout: "Handout",
    key: "Handout with its key",
    slides: "Slides",
    lesson: "Lesson",
    units: "Units",
    guessFirst: "Guess first",
    guessAsk: "Your guess",
    look: "Look",
    exercises: "Now you",
    inTheField: "In the field",
    byHand: "By hand",
    byFunction: "By function",
    source: "Source",
    previous: "Previous",
    next: "Next",
    large: "Show large",
    leave: "Leave",
    print: "Print",
    allSlides: "All slides, to print or keep as PDF",
    scan: "Scan to open this lesson",
    ownAddress:
      "This address works on this computer alone. For phones, open the page under the address that “npm run hall” prints.",
    formulaNote:
      "Where your sheet writes a decimal comma, it wants semicolons between the arguments.",
    score: "{right} of {all} right",
    scoreNote: "Answers that were shown do not count.",
    check: "Check",
    hint: "Hint",
    secondHint: "Second hint",
    showMe: "Show me",
    noUnit: "a plain number",
    numbers: "The numbers",
    minutes: "min",
    ask: "Ask",
    say: "They will say",
    answer: "Answer",
    answers: "Answers of the exercises",
    start: "Eleven short lessons. Guess, look, then try for yourself: a phone is enough.",
    trainerIntro:
      "Half a day for fifteen people. Cans go first: set them out before people come. Each pair needs one phone or laptop; nobody needs a spreadsheet program.",
    link: "Link for a participant's phone",
    handoutTitle: "Movable sprinkler lines: fill in the blanks",
    name: "Name",
    workbook: "The same lessons stand in the workbook Workshop, with every formula.",
    unreachable: "The workshop could not be started.",
    outOfRange: "Nothing to draw with these numbers:",
    safety: "Safety",
    verdicts: {
      right: "Right.",
      percent: "Close: that is percent. Type it as a fraction.",
      close: "Close, within a twentieth. Look at your rounding.",
      "not yet": "Not yet.",
      unread: "That does not begin with a number.",
      unit: "The answer wants {unit}.",
    },
  },
};
