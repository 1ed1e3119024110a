import type { support as english } from "../en/support";
import type { Words } from "../shape";

export const support: Words<typeof english> = {
  title: "Fieldsum: ayuda y privacidad",
  description: "Qué se recoge (nada), y qué hacer cuando una celda muestra un error.",
  questions: "Preguntas, y números que parecen malos:",
  body: (contact, version) => `<h1>Ayuda y privacidad</h1>
<h2>Privacidad</h2>
<p>No se recoge nada. Las funciones calculan en su propia computadora o en su navegador con los
argumentos que usted les da; no leen ninguna otra celda ni envían nada, y lo último que resolvieron
queda en la memoria hasta que se cierra Excel o la página. El panel lee el libro abierto cuando usted
lo pide: al escribir una referencia en un ejemplo lee las celdas que nombra, al abrir Nombres o una
hoja preparada lee los nombres y las hojas que hay, Revisar lee las fórmulas de la hoja activa, y
Dibujo lee la tabla seleccionada. Escribe solo cuando usted presiona un botón. Nada de lo que lee
sale de su computadora. No hay cuentas, ni cookies, ni medición de uso, ni terceros, salvo que Excel
carga su propio script para complementos desde la dirección de su editor, como hace con todo
complemento.</p>
<h2>Ayuda</h2>
${contact}<p>Fieldsum es software libre bajo la licencia MIT, sin garantía. Pregunte primero a quien lo puso en
su Excel: puede ver cómo se instaló. Un número malo es la peor falla: avise con la fórmula, los
valores de sus argumentos, el resultado, y dónde está publicado el valor correcto, al lugar de donde
le llegó el código fuente.</p>
<h2>Cuando una celda muestra un error</h2>
<ul>
<li><b>#VALUE!</b> (#¡VALOR!): un argumento no es lo que la función acepta. Ponga el puntero sobre el
aviso junto a la celda: el mensaje, en inglés, nombra el argumento, lo que recibió y lo que se admite.
La página de la función muestra el mismo mensaje en español.</li>
<li><b>#N/A</b> (#N/D): los argumentos están bien, pero no hay respuesta; el mensaje dice por qué.</li>
<li><b>#NAME?</b> (#¿NOMBRE?): el complemento todavía no está cargado en este libro, o el nombre está
mal escrito. Elija Inicio, Complementos, Fieldsum; si las celdas siguen así, abra el panel, elija
Revisar y luego volver a ingresar estas celdas.</li>
<li><b>#SPILL!</b> (#¡DESBORDAMIENTO!): el resultado necesita más celdas vacías abajo o al lado.</li>
<li><b>#BUSY!</b> (#¡OCUPADO!): Excel espera algo, a menudo un cuadro de diálogo abierto. Ciérrelo.</li>
</ul>
<h2>Qué son los números, y qué no son</h2>
<p>Las funciones son las fórmulas publicadas del oficio, comprobadas como lista la página de fuentes.
Saben lo que dicen sus argumentos y nada más. Donde hay presión, electricidad, orillas de agua,
remolque o un código de por medio, van primero las instrucciones del fabricante, las reglas locales y
un profesional con licencia.</p>
<p class="quiet">Versión ${version}</p>`,
};
