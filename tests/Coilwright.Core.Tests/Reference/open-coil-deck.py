# Writes an input deck for CalculiX: an open coil of round wire, clamped where it starts, loaded at its tip by one force. python3 open-coil-deck.py X Y Z > coil.inp; ccx coil
import math, sys
force = [float(a) for a in sys.argv[1:4]]
R, PITCH, TURNS, WIRE, E, NU, ELEMENTS = 30.0, 8.0, 1.5, 0.62, 193000.0, 0.3, 384
n = 2 * ELEMENTS
print("*NODE, NSET=ALL")
for i in range(n + 1):
    a = 2 * math.pi * TURNS * i / n
    print(f"{i + 1}, {R * math.sin(a):.9f}, {-PITCH * a / (2 * math.pi):.9f}, {R * math.cos(a):.9f}")
print("*ELEMENT, TYPE=B32, ELSET=WIRE")
for e in range(ELEMENTS):
    print(f"{e + 1}, {2 * e + 1}, {2 * e + 2}, {2 * e + 3}")
print(f"*MATERIAL, NAME=STEEL\n*ELASTIC\n{E}, {NU}")
# The normal is square to the wire everywhere: along the arm, less what of it lies along the wire.
print(f"*BEAM SECTION, ELSET=WIRE, MATERIAL=STEEL, SECTION=CIRC\n{WIRE}, {WIRE}\n0., 1., 0.")
print("*BOUNDARY\n1, 1, 6\n*STEP\n*STATIC\n*CLOAD")
for k in range(3):
    if force[k]: print(f"{n + 1}, {k + 1}, {force[k]}")
print("*NSET, NSET=TIP\n%d\n*NODE PRINT, NSET=TIP\nU\n*END STEP" % (n + 1))
