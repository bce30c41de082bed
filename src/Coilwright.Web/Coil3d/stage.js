// Camera, light and beads. Everything is drawn when something changed, never by the clock.
import {
  BackSide, BoxGeometry, CanvasTexture, Color, DirectionalLight, DoubleSide, Euler, Group, HemisphereLight, InstancedMesh, Mesh, MeshBasicMaterial,
  NeutralToneMapping, PCFShadowMap, PerspectiveCamera, PlaneGeometry, PMREMGenerator, Raycaster, Scene, ShadowMaterial, Spherical, SRGBColorSpace, Vector2, Vector3, WebGLRenderer,
} from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';

const FIRST = new Spherical(1, Math.PI * 0.385, 0.32);
const TILE = 2048;

export class Stage {
  #canvas; #box; #tell; #renderer; #scene = new Scene(); #camera = new PerspectiveCamera(26, 1, 0.01, 5); #controls; #rig = new Group(); #sun; #ground; #blob;
  #piece = null; #beads = []; #batches = []; #halo = null; #picked = 0; #reach = 0.06; #asked = 0; #observer; #stop = new AbortController(); #url = null;

  constructor(canvas, box, tell) {
    [this.#canvas, this.#box, this.#tell] = [canvas, box, tell];
    if (!canvas.getContext('webgl2', { antialias: true, alpha: true })) throw new Error('no WebGL');
    const renderer = this.#renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
    renderer.toneMapping = NeutralToneMapping;
    renderer.toneMappingExposure = 1.0;
    renderer.outputColorSpace = SRGBColorSpace;
    renderer.shadowMap.enabled = true;
    renderer.shadowMap.type = PCFShadowMap;
    renderer.setClearColor(0, 0);
    this.#light();
    this.#controls = new OrbitControls(this.#camera, canvas);
    Object.assign(this.#controls, { enablePan: false, enableDamping: false, minPolarAngle: 0.12, maxPolarAngle: Math.PI * 0.62, rotateSpeed: 0.85, zoomSpeed: 0.8, enableZoom: false });
    this.#controls.addEventListener('change', () => this.#ask());
    this.#hear();
    this.#observer = new ResizeObserver(() => this.#fit());
    this.#observer.observe(box);
    this.#fit();
  }

  // A paper-coloured room with large soft windows: what glass, metal and pearl have to mirror.
  #light() {
    const room = new Scene();
    const panel = (colour, strength, size, at) => {
      const wall = new Mesh(new PlaneGeometry(...size), new MeshBasicMaterial({ color: new Color(colour).multiplyScalar(strength), side: DoubleSide }));
      wall.position.set(...at);
      wall.lookAt(0, 0, 0);
      room.add(wall);
    };
    room.add(new Mesh(new BoxGeometry(20, 20, 20), new MeshBasicMaterial({ color: new Color('#cfc3b0').multiplyScalar(0.55), side: BackSide })));
    panel('#fff6e8', 9, [7, 7], [-6.5, 5.5, 5]);
    panel('#eef3ff', 3.2, [5, 8], [8, 2.5, 2.5]);
    panel('#fff9ef', 3.5, [9, 5], [0, 9, -2]);
    panel('#fff4e4', 2.2, [3, 8], [-4, 1, -8]);
    panel('#8d7f6c', 0.7, [16, 16], [0, -9, 0]);
    const generator = new PMREMGenerator(this.#renderer);
    this.#scene.environment = generator.fromScene(room, 0.03, 0.1, 40).texture;
    this.#scene.environmentIntensity = 0.72;
    generator.dispose();
    room.traverse(o => { o.geometry?.dispose(); o.material?.dispose(); });

    // Light comes with whoever looks, as if the piece were turned in the hand.
    this.#scene.add(this.#rig);
    const sun = this.#sun = new DirectionalLight('#fff3e0', 1.9);
    sun.castShadow = true;
    sun.shadow.mapSize.set(1024, 1024);
    sun.shadow.radius = 5;
    sun.shadow.bias = -0.0004;
    sun.shadow.normalBias = 0.0004;
    this.#rig.add(sun, sun.target, new HemisphereLight('#fffaf0', '#b9a78c', 0.55));

    this.#ground = new Mesh(new PlaneGeometry(1, 1), new ShadowMaterial({ color: '#4a3420', opacity: 0.2 }));
    this.#ground.rotation.x = -Math.PI / 2;
    this.#ground.receiveShadow = true;
    this.#blob = new Mesh(new PlaneGeometry(1, 1), new MeshBasicMaterial({ map: softRing(), transparent: true, depthWrite: false, color: '#4a3420', opacity: 0.34 }));
    this.#blob.rotation.x = -Math.PI / 2;
    this.#scene.add(this.#ground, this.#blob);
  }

  /** Loads a model and shows it from where it was looked at; the first one from the front. */
  async load(url) {
    const asked = this.#url = url;
    const answer = await fetch(url, { signal: this.#stop.signal });
    if (!answer.ok) throw new Error(String(answer.status));
    const model = await new GLTFLoader().parseAsync(await answer.arrayBuffer(), '');
    if (asked !== this.#url) return;
    const isFirst = !this.#piece;
    this.#clear();
    this.#piece = new Group();
    const kinds = new Map();
    model.scene.updateMatrixWorld(true);
    model.scene.traverse(node => {
      if (!node.isMesh) return;
      if (!node.userData.bead) {
        const own = new Mesh(node.geometry, node.material);
        own.castShadow = own.receiveShadow = true;
        own.name = node.name;
        this.#piece.add(own);
        return;
      }
      const batch = kinds.get(node.geometry) ?? { geometry: node.geometry, material: node.material, nodes: [] };
      batch.nodes.push(node);
      kinds.set(node.geometry, batch);
    });
    const dressed = new Map();
    for (const { geometry, material, nodes } of kinds.values()) {
      if (!dressed.has(material)) dressed.set(material, dress(material));
      const mesh = new InstancedMesh(geometry, dressed.get(material), nodes.length);
      mesh.castShadow = mesh.receiveShadow = true;
      mesh.userData.beads = nodes.map(n => n.userData.bead);
      nodes.forEach((node, i) => {
        mesh.setMatrixAt(i, node.matrixWorld);
        this.#beads[node.userData.bead] = { mesh, instance: i, letter: node.userData.letter, at: new Vector3().setFromMatrixPosition(node.matrixWorld) };
      });
      mesh.computeBoundingSphere();
      this.#batches.push(mesh);
      this.#piece.add(mesh);
    }
    this.#scene.add(this.#piece);
    this.#settle();
    if (isFirst) this.first();
    else this.#controls.update();
    this.#draw();
  }

  // How far the beads reach decides camera and shadow; the form that is a wrist may run out of the picture.
  #settle() {
    let [reach, low, high] = [0, Infinity, -Infinity];
    for (const bead of this.#beads) {
      if (!bead) continue;
      const radius = bead.mesh.geometry.boundingSphere?.radius ?? (bead.mesh.geometry.computeBoundingSphere(), bead.mesh.geometry.boundingSphere.radius);
      reach = Math.max(reach, Math.hypot(bead.at.x, bead.at.z) + radius);
      [low, high] = [Math.min(low, bead.at.y - radius), Math.max(high, bead.at.y + radius)];
    }
    // A model without beads is looked at too.
    if (!reach) [reach, low, high] = [0.03, -0.03, 0.03];
    this.#reach = Math.hypot(reach, (high - low) / 2);
    const form = this.#piece.children.find(c => c.name === 'wrist');
    if (form) {
      form.geometry.computeBoundingBox();
      low = Math.min(low, form.geometry.boundingBox.min.y);
      this.#reach = Math.max(this.#reach, Math.hypot(reach, form.geometry.boundingBox.max.y));
    }
    const r = this.#reach;
    this.#ground.position.y = low - 0.0004;
    this.#ground.scale.setScalar(r * 9);
    this.#blob.position.y = low - 0.0003;
    this.#blob.scale.setScalar(reach * 2.1);
    this.#sun.position.set(-1.5 * r, 2.6 * r, 2.2 * r);
    Object.assign(this.#sun.shadow.camera, { left: -2 * r, right: 2 * r, top: 2 * r, bottom: -2 * r, near: r * 0.5, far: r * 7 });
    this.#sun.shadow.camera.updateProjectionMatrix();
    this.#camera.near = r * 0.05;
    this.#camera.far = r * 40;
    this.#camera.updateProjectionMatrix();
    this.#controls.minDistance = r * 1.2;
    this.#controls.maxDistance = r * 9;
  }

  /** As it was looked at first. */
  first() {
    this.#look(new Spherical(this.#away(this.#camera.aspect), FIRST.phi, FIRST.theta));
  }

  // So far away that the whole of it is in the picture, whichever side is the shorter.
  #away(aspect) {
    const half = Math.tan(this.#camera.fov * Math.PI / 360) * Math.min(1, aspect);
    return this.#reach * 0.94 / half;
  }

  turn(round, over) {
    const from = this.#spherical();
    this.#look(new Spherical(from.radius, from.phi - over, from.theta - round));
  }

  zoom(by) {
    const from = this.#spherical();
    this.#look(new Spherical(from.radius * by, from.phi, from.theta));
  }

  /** Turns so that a bead is in front. */
  face(bead) {
    const one = this.#beads[bead];
    if (!one) return;
    const from = this.#spherical();
    this.#look(new Spherical(from.radius, from.phi, Math.atan2(one.at.x, one.at.z)));
  }

  #spherical() {
    return new Spherical().setFromVector3(this.#camera.position);
  }

  #look(to) {
    to.phi = Math.min(this.#controls.maxPolarAngle, Math.max(this.#controls.minPolarAngle, to.phi));
    to.radius = Math.min(this.#controls.maxDistance, Math.max(this.#controls.minDistance, to.radius));
    this.#camera.position.setFromSpherical(to);
    this.#controls.update();
    this.#ask();
  }

  /** Marks a bead by a line round it; 0 for none. */
  pick(bead) {
    this.#picked = bead;
    if (this.#halo) {
      this.#scene.remove(this.#halo);
      this.#halo = null;
    }
    const one = this.#beads[bead];
    if (one) {
      const halo = this.#halo = new Mesh(one.mesh.geometry, outline());
      one.mesh.getMatrixAt(one.instance, halo.matrix);
      halo.matrixAutoUpdate = false;
      this.#scene.add(halo);
    }
    this.#ask();
  }

  // Which bead a place in the picture shows; 0 for none. The wire and the form hide what is behind them.
  #beadAt(x, y) {
    const frame = this.#canvas.getBoundingClientRect();
    const ray = new Raycaster();
    ray.setFromCamera(new Vector2((x - frame.left) / frame.width * 2 - 1, 1 - (y - frame.top) / frame.height * 2), this.#camera);
    const hit = ray.intersectObjects(this.#piece?.children ?? [], false)[0];
    return hit?.object.userData.beads?.[hit.instanceId] ?? 0;
  }

  #hear() {
    const on = (type, does, more) => this.#canvas.addEventListener(type, does, { signal: this.#stop.signal, ...more });
    let down = null;
    on('pointerdown', e => {
      down = { x: e.clientX, y: e.clientY };
      this.#canvas.focus({ preventScroll: true });
    });
    // A tap is a press that did not move.
    on('pointerup', e => {
      if (down && Math.hypot(e.clientX - down.x, e.clientY - down.y) < 6) this.#tell.picked(this.#beadAt(e.clientX, e.clientY));
      down = null;
    });
    // The wheel scrolls the page until the picture is what she is at.
    on('focus', () => { this.#controls.enableZoom = true; });
    on('blur', () => { this.#controls.enableZoom = false; });
    on('keydown', e => {
      if (e.ctrlKey || e.metaKey || e.altKey) return;
      const turn = Math.PI / 18;
      const does = {
        ArrowLeft: () => this.turn(-turn, 0), ArrowRight: () => this.turn(turn, 0), ArrowUp: () => this.turn(0, turn), ArrowDown: () => this.turn(0, -turn),
        '+': () => this.zoom(0.88), '=': () => this.zoom(0.88), '-': () => this.zoom(1 / 0.88), Home: () => this.first(), Escape: () => this.#tell.picked(0),
      }[e.key];
      if (!does) return;
      e.preventDefault();
      does();
    });
    on('webglcontextlost', e => e.preventDefault());
    on('webglcontextrestored', () => this.#ask());
  }

  #fit() {
    const [width, height] = [this.#box.clientWidth, this.#box.clientHeight];
    if (!width || !height) return;
    this.#renderer.setPixelRatio(Math.min(2, window.devicePixelRatio || 1));
    this.#renderer.setSize(width, height, false);
    const before = this.#away(this.#camera.aspect);
    this.#camera.aspect = width / height;
    this.#camera.updateProjectionMatrix();
    if (this.#piece) {
      const from = this.#spherical();
      this.#look(new Spherical(from.radius * this.#away(this.#camera.aspect) / before, from.phi, from.theta));
    }
    this.#ask();
  }

  // At most one picture a frame of the screen.
  #ask() {
    if (this.#asked) return;
    this.#asked = requestAnimationFrame(() => {
      this.#asked = 0;
      this.#draw();
    });
  }

  #draw(camera = this.#camera) {
    this.#rig.rotation.y = Math.atan2(camera.position.x, camera.position.z);
    this.#scene.environmentRotation = new Euler(0, -this.#rig.rotation.y, 0);
    this.#renderer.render(this.#scene, camera);
    if (camera === this.#camera) this.#tag();
  }

  #tag() {
    const one = this.#beads[this.#picked];
    if (!one) return this.#tell.moved(null);
    const out = new Vector3(one.at.x, 0, one.at.z).normalize();
    const seen = one.at.clone().addScaledVector(out, one.mesh.geometry.boundingSphere.radius * 1.5);
    const faces = out.dot(this.#camera.position.clone().setY(0).normalize());
    seen.project(this.#camera);
    if (faces < -0.15) return this.#tell.moved(null);
    this.#tell.moved({ letter: one.letter, x: (seen.x + 1) / 2 * this.#box.clientWidth, y: (1 - seen.y) / 2 * this.#box.clientHeight });
  }

  /** Draws one frame to its end and gives what is in its middle. */
  frame() {
    this.#draw();
    const gl = this.#renderer.getContext();
    const pixel = new Uint8Array(4);
    gl.readPixels(gl.drawingBufferWidth >> 1, gl.drawingBufferHeight >> 1, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel);
    return [...pixel];
  }

  /** Where a bead's middle is seen, CSS pixels from the picture's corner. */
  seen(bead) {
    // The view may have changed since the last frame.
    this.#camera.updateMatrixWorld();
    const at = this.#beads[bead].at.clone().project(this.#camera);
    return [(at.x + 1) / 2 * this.#box.clientWidth, (1 - at.y) / 2 * this.#box.clientHeight];
  }

  /** How much a bead faces whoever looks: 1 in front, -1 behind. */
  faces(bead) {
    const at = this.#beads[bead].at;
    return [new Vector3(at.x, 0, at.z).normalize().dot(this.#camera.position.clone().setY(0).normalize())];
  }

  /** A still picture of any size on the page's paper or another ground, drawn in tiles, from where it is looked at now, turned by so much. */
  async still(width, height, turned = 0, ground = getComputedStyle(this.#box).backgroundColor) {
    const whole = document.createElement('canvas');
    [whole.width, whole.height] = [width, height];
    const paper = whole.getContext('2d');
    if (!paper) throw new Error('no picture of that size');
    paper.fillStyle = ground;
    paper.fillRect(0, 0, width, height);
    const camera = this.#camera.clone();
    const from = this.#spherical();
    const scale = this.#away(width / height) / this.#away(this.#camera.aspect);
    camera.position.setFromSpherical(new Spherical(from.radius * scale, from.phi, from.theta + turned));
    camera.lookAt(0, 0, 0);
    camera.aspect = width / height;
    const shown = this.#halo;
    if (shown) this.#scene.remove(shown);
    try {
      this.#renderer.setPixelRatio(1);
      for (let y = 0; y < height; y += TILE)
        for (let x = 0; x < width; x += TILE) {
          const [w, h] = [Math.min(TILE, width - x), Math.min(TILE, height - y)];
          this.#renderer.setSize(w, h, false);
          camera.setViewOffset(width, height, x, y, w, h);
          camera.updateMatrixWorld();
          this.#draw(camera);
          paper.drawImage(this.#canvas, x, y);
        }
    } finally {
      if (shown) this.#scene.add(shown);
      this.#fit();
      this.#draw();
    }
    return await new Promise((done, fail) => whole.toBlob(blob => blob ? done(blob) : fail(new Error('no picture')), 'image/png'));
  }

  #clear() {
    this.pick(0);
    if (this.#piece) {
      this.#scene.remove(this.#piece);
      this.#piece.traverse(o => { o.geometry?.dispose(); o.material?.dispose?.(); o.dispose?.(); });
    }
    [this.#piece, this.#beads, this.#batches] = [null, [], []];
  }

  end() {
    this.#stop.abort();
    this.#observer.disconnect();
    if (this.#asked) cancelAnimationFrame(this.#asked);
    this.#clear();
    this.#controls.dispose();
    this.#renderer.dispose();
    this.#renderer.forceContextLoss();
  }
}

// Glass that is not seen through but lit from within: the light that falls in on one side glows on the other, deep colour where it is looked at along the edge. One pass, and no order to sort by.
function dress(material) {
  const through = material.transmission ?? 0;
  if (!through) return material;
  material.transmission = 0;
  material.thickness = 0;
  material.envMapIntensity = 1.5;
  const clear = 1 - material.roughness;
  material.onBeforeCompile = shader => {
    shader.uniforms.through = { value: through };
    shader.uniforms.clear = { value: clear };
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', '#include <common>\nuniform float through;\nuniform float clear;')
      .replace('#include <emissivemap_fragment>', `#include <emissivemap_fragment>
        {
          // The sun stands up and to the left of whoever looks; what it sends through comes out low on the right.
          vec3 from = normalize(vec3(-0.5, 0.62, 0.6));
          float facing = clamp(dot(normalize(vViewPosition), normal), 0.0, 1.0);
          float glow = pow(clamp(0.5 - 0.5 * dot(normal, from), 0.0, 1.0), 2.0) * mix(0.75, 1.0, facing);
          vec3 deep = diffuseColor.rgb * diffuseColor.rgb;
          totalEmissiveRadiance += through * (mix(diffuseColor.rgb, vec3(1.0), 0.12) * glow * mix(0.55, 0.95, clear) + diffuseColor.rgb * 0.10);
          diffuseColor.rgb = mix(diffuseColor.rgb, mix(deep, diffuseColor.rgb, facing), through * 0.85);
        }`);
  };
  material.customProgramCacheKey = () => 'lit from within';
  return material;
}

// A line round a bead: its own skin, seen from inside and drawn a little out.
function outline() {
  const material = new MeshBasicMaterial({ color: '#a84a23', side: BackSide, toneMapped: false });
  material.onBeforeCompile = shader => {
    shader.vertexShader = shader.vertexShader.replace('#include <project_vertex>', `#include <project_vertex>
      vec3 out3 = normalize(normalMatrix * normal);
      mvPosition.xyz += out3 * (-mvPosition.z) * 0.0045;
      gl_Position = projectionMatrix * mvPosition;`);
  };
  return material;
}

// The soft shade where a coil stands on the table.
function softRing() {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 256;
  const paper = canvas.getContext('2d');
  const shade = paper.createRadialGradient(128, 128, 0, 128, 128, 128);
  for (const [at, alpha] of [[0, 0.62], [0.5, 0.55], [0.66, 0.4], [0.8, 0.17], [0.92, 0.04], [1, 0]]) shade.addColorStop(at, `rgb(255 255 255 / ${alpha})`);
  paper.fillStyle = shade;
  paper.fillRect(0, 0, 256, 256);
  return new CanvasTexture(canvas);
}
