import static org.oaktag.adjust.Darts.*
import static org.oaktag.adjust.Pieces.*
import static org.oaktag.adjustments.Armholes.*
import static org.oaktag.adjustments.Bands.*
import static org.oaktag.adjustments.Bodies.*
import static org.oaktag.adjustments.Finishes.*
import static org.oaktag.adjustments.Hoods.*
import static org.oaktag.adjustments.Necklines.*
import static org.oaktag.adjustments.Shoulders.*
import static org.oaktag.adjustments.Sleeves.*
import static org.oaktag.measure.Angle.*
import static org.oaktag.measure.Length.*
import static org.oaktag.measure.Percent.*
import static org.oaktag.skirt.SkirtFinishes.*
import static org.oaktag.skirt.SkirtShapes.*

import org.oaktag.*
import org.oaktag.adjust.*
import org.oaktag.block.*
import org.oaktag.blocks.*
import org.oaktag.body.*
import org.oaktag.export.pdf.*
import org.oaktag.export.sheet.*
import org.oaktag.export.svg.*
import org.oaktag.garment.*
import org.oaktag.recipe.json.*
import org.oaktag.skirt.*
