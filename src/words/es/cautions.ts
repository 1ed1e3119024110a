import type { Texts } from "../translate";

/** Where work can hurt someone: titles, brief sentences and points. */
export const cautions: Texts = {
  "Pressure in pipe and tubing": "Presión en tuberías",
  "Check against the rating of the weakest part at the highest static pressure; open nothing that is under pressure.":
    "Compare con la presión admisible de la pieza más débil a la mayor presión estática; no abra nada que esté bajo presión.",
  "The highest pressure is often the static one, with every valve shut, at the lowest point of main, feeder or line. Compare it, and the surge on top of it, with the rating of the weakest part.":
    "La mayor presión suele ser la estática, con todas las válvulas cerradas, en el punto más bajo de la tubería principal, la alimentadora o la línea. Compárela, con el golpe de ariete encima, con la presión admisible de la pieza más débil.",
  "Do not leave a pump running against closed valves to read that pressure: the water heats, and can scald or burst the casing. Take it from the pump's curve, or from a reading of seconds.":
    "No deje una bomba en marcha contra válvulas cerradas para leer esa presión: el agua se calienta, y puede escaldar o reventar la carcasa. Tómela de la curva de la bomba, o de una lectura de segundos.",
  "Heat weakens polyethylene: black tubing in the sun bears much less than its printed rating. Rate it at the temperature of its wall, not of the water.":
    "El calor debilita el polietileno: la tubería negra al sol aguanta mucho menos que la presión impresa en ella. Califíquela a la temperatura de su pared, no a la del agua.",
  "Before you open anything: close the supply, stop the pump, open the lowest drain or the far valve, and see the flow stop. A gauge can stick, and a check valve, a regulator or a closed quick connect can hold pressure behind it, so zero on one gauge is no proof.":
    "Antes de abrir nada: cierre el suministro, pare la bomba, abra el drenaje más bajo o la válvula lejana, y vea que el agua deje de salir. Un manómetro se puede trabar, y una válvula de retención, un regulador o un conector rápido cerrado pueden retener presión detrás, así que un cero en un manómetro no prueba nada.",
  "Then open caps and joints slowly, a little at first, standing to the side.":
    "Después abra tapones y uniones despacio, primero un poco, parado a un lado.",
  "Fill slowly, let the air out at the high points and the far end, and close valves slowly. Trapped air or a fast stop can burst a pipe that holds the working pressure.":
    "Llene despacio, deje salir el aire en los puntos altos y en el extremo lejano, y cierre las válvulas despacio. El aire atrapado o un paro brusco pueden reventar una tubería que aguanta la presión de trabajo.",
  "The marking on the pipe and the manufacturer's rating go before any computed one. Where public safety, high head or a code is concerned, a licensed engineer decides.":
    "Lo marcado en el tubo y la presión admisible del fabricante van antes que cualquier valor calculado. Donde hay seguridad pública, mucha carga o un código de por medio, decide un ingeniero con licencia.",
  "A plan is no survey": "Un plano no es un levantamiento",
  "A plan is no survey: walk it, have buried lines located, look up for wires, and check the pressure at the lowest corner.":
    "Un plano no es un levantamiento: recórralo a pie, pida que ubiquen las líneas enterradas, mire si hay cables arriba, y compruebe la presión en la esquina más baja.",
  "A plan is drawn from the corners, heights and obstacles that were typed, and is no survey. Walk every line before anything is bought, dug or staked; boundaries, easements and rights of way are for a licensed surveyor.":
    "El plano se dibuja con las esquinas, alturas y obstáculos que se escribieron, y no es un levantamiento. Recorra cada línea a pie antes de comprar, cavar o estacar; linderos, servidumbres y derechos de paso son de un topógrafo con licencia.",
  "It shows no buried line and no overhead wire. Have buried lines located first, in the United States by calling 811, and keep pipe, risers and spray away from wires.":
    "No muestra líneas enterradas ni cables aéreos. Pida primero que ubiquen las líneas enterradas, en los Estados Unidos llamando al 811, y mantenga tuberías, elevadores y chorros lejos de los cables.",
  "The highest pressure stands at the lowest corner with every valve shut. Compare that static pressure, and the surge on top of it, with the rating of the weakest part.":
    "La mayor presión está en la esquina más baja con todas las válvulas cerradas. Compare esa presión estática, con el golpe de ariete encima, con la presión admisible de la pieza más débil.",
  "Water is thrown beyond the edge where lines lie near it, and wind carries it farther: keep it off roads, neighbors, buildings and anything electric.":
    "Donde las líneas quedan cerca del borde el agua cae fuera del campo, y el viento la lleva más lejos: manténgala fuera de caminos, vecinos, edificios y de todo lo eléctrico.",
  "Local codes, the manufacturers' instructions and licensed practice go before anything drawn or computed here.":
    "Los códigos locales, las instrucciones de los fabricantes y los profesionales con licencia van antes que todo lo dibujado o calculado aquí.",
  "Electric pumps and controls": "Bombas y controles eléctricos",
  "Lock and tag the disconnect before work on a pump; wiring is work for a licensed electrician.":
    "Bloquee y etiquete el interruptor antes de trabajar en una bomba; el cableado es trabajo de un electricista con licencia.",
  "Wiring, grounding, overload and ground-fault protection are work for a licensed electrician under the local electrical code.":
    "El cableado, la puesta a tierra, la protección contra sobrecarga y contra fallas a tierra son trabajo de un electricista con licencia según el código eléctrico local.",
  "Before you touch the pump, its shaft or its couplings: lock the disconnect open, tag it, then try the start. The pump must not turn.":
    "Antes de tocar la bomba, su eje o sus acoples: bloquee el interruptor abierto, etiquételo y luego intente arrancar. La bomba no debe girar.",
  "That does not prove the circuit dead. Only a qualified person with a tested meter can, so leave covers and wiring to one.":
    "Eso no prueba que el circuito esté sin tensión. Solo puede hacerlo una persona calificada con un medidor probado, así que déjele a ella las tapas y el cableado.",
  "Keep guards on shafts, couplings and belts, and keep loose clothing and hair away from them. A pump on automatic start can turn at any moment.":
    "Mantenga las guardas en ejes, acoples y correas, y lejos de ellos la ropa suelta y el cabello. Una bomba de arranque automático puede girar en cualquier momento.",
  "Never work on a pump while you stand in water or on wet ground with the power on. Follow the pump's and the motor's own instructions.":
    "Nunca trabaje en una bomba parado en el agua o en suelo mojado con la corriente conectada. Siga las instrucciones de la bomba y del motor.",
  "Pond edge, suction and deep water": "Orilla del estanque, succión y agua honda",
  "Stop the pump before anyone nears the intake; never work alone at the edge of the water.":
    "Pare la bomba antes de que alguien se acerque a la toma; nunca trabaje solo a la orilla del agua.",
  "Banks are soft and slippery, and a tank has walls that nobody can climb. Do not work there alone; wear a life jacket and have a rope or ring within reach.":
    "Las orillas son blandas y resbalosas, y un tanque tiene paredes que nadie puede trepar. No trabaje ahí solo; use chaleco salvavidas y tenga a mano una cuerda o un aro.",
  "Stop the pump and lock it out before anyone nears the intake. Suction holds a hand, clothing or a person under water; keep a large screen around it and people out of the water.":
    "Pare la bomba y bloquéela antes de que alguien se acerque a la toma. La succión retiene bajo el agua una mano, la ropa o a una persona; ponga una malla grande alrededor y mantenga a la gente fuera del agua.",
  "Keep children and livestock away from the pond, the intake and the pump. Fence where local rules ask for it.":
    "Mantenga a niños y ganado lejos del estanque, de la toma y de la bomba. Cerque donde lo pidan las reglas locales.",
  "Taking water needs a right or a permit in many places: ask the local water authority.":
    "Tomar agua necesita un derecho o un permiso en muchos lugares: pregunte a la autoridad local del agua.",
  "Engines, fuel and exhaust": "Motores, combustible y escape",
  "Run engines outdoors only; let them cool before you refuel.":
    "Use los motores solo al aire libre; déjelos enfriar antes de cargar combustible.",
  "Exhaust holds carbon monoxide, which kills without smell. Run an engine outdoors only, away from doors, windows and pits.":
    "El escape lleva monóxido de carbono, que mata sin olor. Use un motor solo al aire libre, lejos de puertas, ventanas y fosas.",
  "Stop the engine and let it cool before you refuel. No smoking or flame near fuel; wipe up spills before you start.":
    "Pare el motor y déjelo enfriar antes de cargar combustible. No fume ni acerque llama al combustible; limpie los derrames antes de arrancar.",
  "Store fuel in approved containers away from the water source and the well; use spill containment where local rules ask for it.":
    "Guarde el combustible en envases aprobados lejos de la fuente de agua y del pozo; use contención de derrames donde lo pidan las reglas locales.",
  "Fuel gas, natural or propane, is work for a licensed gas technician. Follow the engine's own instructions and the local fire code.":
    "El gas, natural o propano, es trabajo de un técnico en gas con licencia. Siga las instrucciones del propio motor y el código local contra incendios.",
  "Towing a line": "Remolque de una línea",
  "Shut off and drain first; pull from the hitch point only, low and in line, with nobody near the line.":
    "Cierre y vacíe primero; tire solo del punto de enganche, bajo y en línea, sin nadie cerca de la línea.",
  "Shut off, drain, and see that no pressure is left before you uncouple or pull. Bend no tighter than the tubing allows; a kink is a weak place for good.":
    "Cierre, vacíe y vea que no quede presión antes de desacoplar o tirar. No curve más de lo que admite la tubería; un doblez es un lugar débil para siempre.",
  "Pull from the vehicle's hitch point only, low and in line; never from a rack or an axle. A high or side pull can turn a vehicle over.":
    "Tire solo del punto de enganche del vehículo, bajo y en línea; nunca de una parrilla o de un eje. Un tiro alto o de lado puede volcar un vehículo.",
  "Never tow with the rope held in or wrapped round a hand; lifting a line by hand is another thing. Keep fingers out of pins and couplings, and let the vehicle stand before you hitch.":
    "Nunca remolque con la cuerda sostenida en la mano o enrollada en ella; levantar una línea a mano es otra cosa. Mantenga los dedos fuera de pasadores y acoples, y deje el vehículo quieto antes de enganchar.",
  "Stay within the pull limits of the vehicle, the hitch, the tubing and its joints: the weakest governs. Start slowly, and stop at once when the line catches.":
    "Quédese dentro de los límites de tiro del vehículo, del enganche, de la tubería y de sus uniones: gobierna el más débil. Arranque despacio, y pare en el acto si la línea se traba.",
  "On slopes go straight up or down where you can. Turning, crossing a slope or being dragged by a line running downhill can roll a vehicle over.":
    "En pendientes vaya derecho hacia arriba o hacia abajo donde pueda. Girar, cruzar una pendiente o ser arrastrado por una línea que corre cuesta abajo puede volcar un vehículo.",
  "No passengers, and no children near. Keep people and animals clear of the line, and never stand in a loop of it: a line under tension can whip when something lets go.":
    "Sin pasajeros, y sin niños cerca. Mantenga a personas y animales lejos de la línea, y nunca se pare dentro de una vuelta de ella: una línea tensa puede dar un latigazo cuando algo cede.",
  "The vehicle's manual and the tubing manufacturer's limits go before any computed pull.":
    "El manual del vehículo y los límites del fabricante de la tubería van antes que cualquier tiro calculado.",
  "Overhead wires": "Líneas eléctricas aéreas",
  "Keep pipe, poles and spray away from overhead wires; ask the utility for the distance.":
    "Mantenga tubos, postes y chorro lejos de las líneas eléctricas aéreas; pregunte la distancia a la compañía eléctrica.",
  "Look up before you raise or carry pipe, risers or poles. Lay long pieces flat to move them, and keep well away from every overhead line: ask the utility for the distance.":
    "Mire hacia arriba antes de levantar o llevar tubos, elevadores o postes. Lleve acostadas las piezas largas, y manténgase bien lejos de toda línea aérea: pregunte la distancia a la compañía eléctrica.",
  "Do not let a solid stream or spray reach wires, poles, transformers or an electric fence's charger. Water can carry current back to whatever you touch.":
    "No deje que un chorro lleno o la aspersión llegue a cables, postes, transformadores o al energizador de un cerco eléctrico. El agua puede traer corriente hasta lo que usted toque.",
  "If a wire is down or touches pipe or a machine, stay away, keep others away and call the utility.":
    "Si hay un cable caído o tocando un tubo o una máquina, quédese lejos, mantenga lejos a los demás y llame a la compañía eléctrica.",
  "The utility and the local code say what is allowed near their lines.":
    "La compañía eléctrica y el código local dicen qué se permite cerca de sus líneas.",
  Lightning: "Rayos",
  "Leave the field at the first thunder; stay away until 30 minutes after the last.":
    "Salga del campo al primer trueno; manténgase lejos hasta 30 minutos después del último.",
  "Leave the field, the pipe, the pump and the pond at the first thunder. Long wet lines carry lightning from far away.":
    "Deje el campo, la tubería, la bomba y el estanque al primer trueno. Las líneas largas y mojadas traen el rayo desde lejos.",
  "Go into a building or a closed vehicle; a tree, a shed with open sides or a machine without a cab is no shelter.":
    "Vaya a un edificio o a un vehículo cerrado; un árbol, un galpón abierto o una máquina sin cabina no son refugio.",
  "Stay away until 30 minutes after the last thunder; the weather service's warnings and local emergency instructions go first.":
    "Manténgase lejos hasta 30 minutos después del último trueno; van primero los avisos del servicio meteorológico y las instrucciones locales de emergencia.",
  "Spray on roads, buildings and neighbors": "Agua sobre caminos, edificios y vecinos",
  "Keep spray off roads, buildings, neighbors and anything electric, in the wind you expect.":
    "Mantenga el agua fuera de caminos, edificios, vecinos y todo lo eléctrico, con el viento que espera.",
  "Spray on a road blinds drivers and freezes into ice. Set part-circle sprinklers or keep the line back far enough for the wind you expect.":
    "El agua sobre un camino ciega a los conductores y se hace hielo. Ponga aspersores de círculo parcial o deje la línea bastante atrás para el viento que espera.",
  "Keep spray off houses, paths, playgrounds, livestock drinking places and anything electric.":
    "Mantenga el agua fuera de casas, veredas, juegos infantiles, bebederos de ganado y todo lo eléctrico.",
  "A line across a road or a track needs the owner's or the road authority's leave, and protection from wheels.":
    "Una línea que cruza un camino necesita el permiso del dueño o de la autoridad vial, y protección contra las ruedas.",
  "Waste water, manure water or anything mixed into the water must not drift or run onto a neighbor, a road, a ditch or a well. Keep the setbacks that local rules give.":
    "El agua residual, la de estiércol o la mezclada con cualquier cosa no debe derivar ni correr hacia un vecino, un camino, una zanja o un pozo. Respete los retiros que dan las reglas locales.",
  "Backflow into drinking water": "Reflujo hacia el agua potable",
  "Fit and test the backflow device that the local code names before you join a drinking-water supply or a well.":
    "Instale y pruebe el dispositivo contra reflujo que pide el código local antes de conectarse a agua potable o a un pozo.",
  "A line joined to a drinking-water supply or a well can suck field water back. Fit the backflow device that the local plumbing code names, and have it tested as the code says.":
    "Una línea conectada a agua potable o a un pozo puede succionar agua del campo de vuelta. Instale el dispositivo contra reflujo que nombra el código local, y hágalo probar como dice el código.",
  'Mark taps and outlets of untreated water "not for drinking".':
    'Marque las llaves y salidas de agua sin tratar "no potable".',
  "Chemicals or fertilizer in the water need their own injection safety: check valves, interlock and a vacuum break, as the product's label and the law ask.":
    "Los químicos o fertilizantes en el agua necesitan su propia seguridad de inyección: válvulas de retención, enclavamiento y rompedor de vacío, como piden la etiqueta del producto y la ley.",
  "Connections to a public or potable supply are work for a licensed plumber.":
    "Las conexiones a un suministro público o potable son trabajo de un plomero con licencia.",
  "Treated water: chemicals, fertilizer, waste water":
    "Agua tratada: químicos, fertilizante, agua residual",
  "Keep people out of the spray and off the field for the label's re-entry time.":
    "Mantenga a la gente fuera del agua aplicada y fuera del campo durante el tiempo de reingreso de la etiqueta.",
  "Keep people out of the spray of treated water, and off the field for the re-entry time on the label. Wear what the label says when you handle the product or the line.":
    "Mantenga a la gente fuera de la aspersión de agua tratada, y fuera del campo durante el tiempo de reingreso de la etiqueta. Use lo que dice la etiqueta cuando maneja el producto o la línea.",
  "Post signs where the law asks for them, and take them down when the time is over.":
    "Ponga letreros donde lo pide la ley, y quítelos cuando pase el tiempo.",
  "Rinse the line, the sprinklers and your hands before other work; water left in the line is treated water too.":
    "Enjuague la línea, los aspersores y sus manos antes de otro trabajo; el agua que queda en la línea también es agua tratada.",
  "The product's label is the law in many places, and it goes before anything computed here.":
    "En muchos lugares la etiqueta del producto es ley, y va antes que todo lo calculado aquí.",
  "Stakes, trenches and buried lines": "Estacas, zanjas y líneas enterradas",
  "Have buried lines located before you drive a stake or dig; in the United States call 811.":
    "Haga ubicar las líneas enterradas antes de clavar una estaca o cavar; en Estados Unidos llame al 811.",
  "Have buried cables, gas and water lines located and marked before you drive a stake or dig: in the United States call 811 first, elsewhere the local locating service. It is the law in many places.":
    "Haga ubicar y marcar cables, gas y agua enterrados antes de clavar una estaca o cavar: en Estados Unidos llame primero al 811, en otros países al servicio local de ubicación. Es ley en muchos lugares.",
  "Positions computed here are for laying out a field. They are no property survey and know nothing of what is buried.":
    "Las posiciones calculadas aquí son para trazar un campo. No son un levantamiento de linderos y no saben nada de lo que está enterrado.",
  "Mark stakes and flags so that people, mowers and livestock see them, and take them up afterwards.":
    "Marque estacas y banderas para que las vean personas, segadoras y ganado, y retírelas después.",
  "A trench can cave in without warning. Never enter one deeper than the local code allows without shoring or sloped sides; keep soil piles and machines back from its edge.":
    "Una zanja puede derrumbarse sin aviso. Nunca entre en una más honda de lo que permite el código local sin entibado o taludes; mantenga lejos del borde la tierra sacada y las máquinas.",
  "Flushing a line": "Lavado de una línea",
  "Shut off and drain before the cap comes off; hold down the open end, and open slowly.":
    "Cierre y vacíe antes de quitar el tapón; sujete el extremo abierto, y abra despacio.",
  "Shut off and drain the line before the end cap comes off; stand to the side while it does.":
    "Cierre y vacíe la línea antes de quitar el tapón final; párese a un lado mientras sale.",
  "Stake or weigh down the open end and point it away from people, roads and wires. Under flow a loose end can whip.":
    "Sujete el extremo abierto con estacas o peso y apúntelo lejos de personas, caminos y cables. Con caudal, un extremo suelto puede dar latigazos.",
  "Open slowly, from the other end, with nobody near the open one. Shut off again before the cap goes back.":
    "Abra despacio, desde el otro extremo, sin nadie cerca del abierto. Cierre otra vez antes de volver a poner el tapón.",
  "Where the flushed water may run, and what it may carry, local rules say; the filter's and the pump's instructions say what they bear.":
    "Adónde puede correr el agua del lavado, y qué puede llevar, lo dicen las reglas locales; las instrucciones del filtro y de la bomba dicen lo que aguantan.",
  "Saddles: drilling and tapping": "Collarines: perforar y derivar",
  "Never drill or tap a saddle into pipe that is under pressure.":
    "Nunca perfore ni derive un collarín en un tubo bajo presión.",
  "Never drill or tap a saddle into pipe that is under pressure: shut off, drain, and see the flow stop.":
    "Nunca perfore ni derive un collarín en un tubo bajo presión: cierre, vacíe y vea que el agua deje de salir.",
  "Use a battery drill, not one on a cord: the pipe and the ground are wet.":
    "Use un taladro de batería, no uno con cable: el tubo y el suelo están mojados.",
  "Wear eye protection, and hold the pipe so that it cannot turn.":
    "Use protección para los ojos, y sujete el tubo para que no gire.",
  "Clear the chips out of the pipe before water goes on: they plug nozzles and regulators.":
    "Saque las virutas del tubo antes de dar agua: tapan boquillas y reguladores.",
  "The saddle manufacturer's instructions say the drill's size, the torque and the pressure it bears.":
    "Las instrucciones del fabricante del collarín dicen el tamaño de la broca, el torque y la presión que aguanta.",
  "Rolls of tubing, and ice in a line": "Rollos de tubería, y hielo en una línea",
  "Cut a roll's straps one at a time, standing to the side; never pressurize a line that may hold ice.":
    "Corte las cintas de un rollo de una en una, parado a un lado; nunca ponga presión en una línea que pueda tener hielo.",
  "A roll is a spring. Cut its straps one at a time, from the outside in, standing to the side, with nobody in the way of the end.":
    "Un rollo es un resorte. Corte sus cintas de una en una, de fuera hacia dentro, parado a un lado, sin nadie en el camino del extremo.",
  "Rolls are heavy and roll: lift with help or a machine, and chock them on a slope.":
    "Los rollos pesan y ruedan: levántelos con ayuda o con una máquina, y cálcelos en una pendiente.",
  "Do not pressurize a line that may hold ice: a plug can burst the line or shoot out of it. Let it thaw by itself, with the end open.":
    "No ponga presión en una línea que pueda tener hielo: un tapón de hielo puede reventarla o salir disparado. Deje que se derrita solo, con el extremo abierto.",
  "The tubing manufacturer's instructions for handling, cold and storage go first.":
    "Las instrucciones del fabricante de la tubería para manejo, frío y almacenamiento van primero.",
  "Blowing out with compressed air": "Soplado con aire comprimido",
  "Drain by gravity where you can; leave the rest to a qualified contractor with low-pressure air.":
    "Vacíe por gravedad donde pueda; deje el resto a un contratista calificado con aire a baja presión.",
  "Draining by gravity comes first. Compressed air stores far more energy than water at the same pressure, and a part that fails becomes a missile.":
    "Vaciar por gravedad va primero. El aire comprimido guarda mucha más energía que el agua a la misma presión, y una pieza que falla se vuelve un proyectil.",
  "Mains that do not drain by gravity are work for a qualified contractor with low-pressure air.":
    "Las tuberías principales que no se vacían por gravedad son trabajo de un contratista calificado con aire a baja presión.",
  "The air is regulated and relieved, both set low, and never above the rating of the weakest part. The far end is open before the air goes on.":
    "El aire va regulado y con alivio, ambos ajustados bajo, y nunca por encima de la presión admisible de la pieza más débil. El extremo lejano está abierto antes de dar aire.",
  "Air is never blown through a pump, and is kept out of a filter or a backflow device unless the manufacturer's instructions say how.":
    "Nunca se sopla aire a través de una bomba, y se mantiene fuera de un filtro o un dispositivo contra reflujo salvo que las instrucciones del fabricante digan cómo.",
  "Wear eye and ear protection, stand aside of open ends and sprinklers, and never leave a line under air.":
    "Use protección para ojos y oídos, quédese a un lado de extremos abiertos y aspersores, y nunca deje una línea con aire.",
  "The compressor's and the parts' own instructions and the local code go first.":
    "Las instrucciones del compresor y de las piezas y el código local van primero.",
};
