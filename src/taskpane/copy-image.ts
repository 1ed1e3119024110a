/** Room of the image beyond the screen's own resolution, so that it prints well. */
const SCALE = 2;

/**
 * Puts a picture on the clipboard as a PNG. The colors come from the page's style sheets, which an
 * image on its own does not have, so each drawn element's computed look is written into a copy.
 */
export async function copyAsImage(svg: SVGSVGElement): Promise<void> {
  const image = await rasterize(svg);
  await navigator.clipboard.write([new ClipboardItem({ "image/png": image })]);
}

const LOOK = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-opacity",
  "font-family",
  "font-size",
  "font-weight",
  "text-anchor",
] as const;

export async function rasterize(svg: SVGSVGElement): Promise<Blob> {
  const { width, height } = svg.viewBox.baseVal;
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const originals = svg.querySelectorAll("*");
  copy.querySelectorAll<SVGElement>("*").forEach((part, i) => {
    const computed = getComputedStyle(originals[i]);
    for (const property of LOOK) part.setAttribute(property, computed.getPropertyValue(property));
  });
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  copy.setAttribute("width", String(width));
  copy.setAttribute("height", String(height));
  const source = new Blob([new XMLSerializer().serializeToString(copy)], { type: "image/svg+xml" });
  const address = URL.createObjectURL(source);
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = width * SCALE;
    canvas.height = height * SCALE;
    const context = canvas.getContext("2d");
    if (context === null) throw new Error("no drawing surface");
    context.fillStyle = getComputedStyle(document.body).backgroundColor;
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob(
        (blob) => (blob === null ? reject(new Error("no image")) : resolve(blob)),
        "image/png",
      ),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}
